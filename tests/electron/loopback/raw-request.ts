import { connect } from 'node:net'

/** Sends bytes as they stand to a port of this machine and answers everything that comes back. */
export const rawRequest = (port: number, text: string): Promise<string> =>
  new Promise((done) => {
    let answer = ''
    const socket = connect(port, '127.0.0.1', () => socket.write(text.replaceAll('\n', '\r\n')))
    socket.setTimeout(3000, () => socket.destroy())
    socket.on('data', (chunk) => {
      answer += chunk.toString('latin1')
    })
    socket.on('error', () => {})
    socket.on('close', () => done(answer))
  })

export const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0)
