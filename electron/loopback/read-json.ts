import type { IncomingMessage } from 'node:http'

export type JsonBody = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly status: number }

/** Reads a JSON body of at most `limit` bytes; longer ones are not read to the end. */
export const readJson = async (request: IncomingMessage, limit: number): Promise<JsonBody> => {
  if (Number(request.headers['content-length'] ?? 0) > limit) return { ok: false, status: 413 }
  const chunks: Buffer[] = []
  let size = 0
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length
    if (size > limit) return { ok: false, status: 413 }
    chunks.push(chunk)
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks))
    return { ok: true, value: JSON.parse(text) }
  } catch {
    return { ok: false, status: 400 }
  }
}
