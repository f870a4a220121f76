import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { z } from 'zod'
import { type Transport, writes } from '../../core/api/dispatcher.ts'
import type { Answer, Failure } from '../../core/api/errors.ts'
import type { PageFiles } from '../page/page-files.ts'
import { pageHeaders } from '../page/page-policy.ts'
import { bearerOf, type Refusal, refuseBody, refuseCaller, refuseHost, refuseTarget } from './door.ts'
import { readJson } from './read-json.ts'
import { createSession } from './session.ts'

export interface LoopbackOptions {
  /** The page as it stands when a request comes; fixed but for development. */
  readonly files: () => PageFiles
  readonly dispatch: Transport
  /** 0 or absent: any free port. */
  readonly port?: number | undefined
  /** Milliseconds, for the life of a one-time code. */
  readonly now: () => number
  /** Told method, path and status, and never a query, a header or a body. */
  readonly log: (line: string) => void
}

export interface LoopbackHost {
  readonly origin: string
  /** The page's address with a fresh one-time code in its fragment, which never reaches a server or a log. */
  readonly newAddress: () => string
  readonly close: () => Promise<void>
}

/** A whole library as text is the largest thing a page sends. */
const bodyLimit = 64 * 1024 * 1024
const codeLimit = 1024
const handOver = z.strictObject({ code: z.string().max(200) })

const failed = (code: Failure['code']): Answer => ({ ok: false, failure: { code, details: {} } })

/** Serves the page and its calls to a browser on this machine, and to nobody else. */
export const startLoopback = async (options: LoopbackOptions): Promise<LoopbackHost> => {
  const session = createSession(options.now)
  let address = ''
  let origin = ''

  const send = (response: ServerResponse, status: number, type: string, body: string | Buffer) => {
    response.writeHead(status, { ...pageHeaders, 'Content-Type': type, 'Content-Length': Buffer.byteLength(body) })
    response.end(body)
  }
  const sendJson = (response: ServerResponse, status: number, value: unknown) =>
    send(response, status, 'application/json; charset=utf-8', JSON.stringify(value))
  const refuse = (response: ServerResponse, { status }: Refusal) => {
    // What was sent after a refused head is not read, so the line cannot be used again.
    response.shouldKeepAlive = false
    sendJson(response, status, failed(status === 403 || status === 421 ? 'forbidden' : 'bad-input'))
  }

  const servePage = (path: string, response: ServerResponse) => {
    const file = options.files().get(path)
    if (file) send(response, 200, file.type, file.bytes)
    else refuse(response, { status: 404, why: 'path' })
  }

  const openSession = async (request: IncomingMessage, response: ServerResponse) => {
    const refusal = refuseCaller(request, origin, true) ?? refuseBody(request)
    if (refusal) return refuse(response, refusal)
    const body = await readJson(request, codeLimit)
    if (!body.ok) return refuse(response, { status: body.status, why: 'body' })
    const asked = handOver.safeParse(body.value)
    if (!asked.success) return refuse(response, { status: 400, why: 'body' })
    const token = session.exchange(asked.data.code)
    if (token === null) return refuse(response, { status: 403, why: 'code' })
    sendJson(response, 200, { token })
  }

  const call = async (name: string, request: IncomingMessage, response: ServerResponse) => {
    const refusal = refuseCaller(request, origin, writes(name)) ?? refuseBody(request)
    if (refusal) return refuse(response, refusal)
    const token = bearerOf(request)
    if (token === null || !session.accepts(token)) return refuse(response, { status: 403, why: 'token' })
    const body = await readJson(request, bodyLimit)
    if (!body.ok) return refuse(response, { status: body.status, why: 'body' })
    sendJson(response, 200, await options.dispatch(name, body.value))
  }

  const handle = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const refusal = refuseHost(request, address) ?? refuseTarget(request.url)
    if (refusal) return refuse(response, refusal)
    const path = request.url ?? ''
    if (request.method === 'GET' || request.method === 'HEAD') return servePage(path, response)
    if (request.method !== 'POST') return refuse(response, { status: 403, why: 'method' })
    if (path === '/session') return openSession(request, response)
    if (path.startsWith('/api/')) return call(path.slice('/api/'.length), request, response)
    refuse(response, { status: 404, why: 'path' })
  }

  const server = createServer({ maxHeaderSize: 16 * 1024, headersTimeout: 10_000, requestTimeout: 60_000 })
  server.keepAliveTimeout = 5_000
  server.maxConnections = 64
  server.on('request', (request, response) => {
    const path = (request.url ?? '').split('?')[0]
    response.on('finish', () => options.log(`${request.method} ${path} ${response.statusCode}`))
    handle(request, response).catch(() => {
      // A broken line is the only thing that can fail here; the dispatcher itself never rejects.
      if (response.headersSent) response.destroy()
      else refuse(response, { status: 500, why: 'error' })
    })
  })
  // Nothing here speaks any other protocol, so an upgrade is refused whoever asks.
  server.on('upgrade', (_request, socket) => socket.end('HTTP/1.1 403 Forbidden\r\nConnection: close\r\n\r\n'))

  await new Promise<void>((done, fail) => {
    server.once('error', fail)
    server.listen({ host: '127.0.0.1', port: options.port ?? 0, exclusive: true }, done)
  })
  const bound = server.address()
  if (bound === null || typeof bound === 'string' || bound.address !== '127.0.0.1') {
    server.close()
    throw new Error('the page could not be bound to this machine alone')
  }
  address = `127.0.0.1:${bound.port}`
  origin = `http://${address}`

  return {
    origin,
    newAddress: () => `${origin}/#code=${session.newCode()}`,
    close: () =>
      new Promise<void>((done) => {
        server.close(() => done())
        server.closeAllConnections()
      }),
  }
}
