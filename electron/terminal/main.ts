import { run } from './run.ts'

let unwritten = false

// Whoever reads may have had enough (`| head -1`): that is no fault, and the status still says how it went.
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => {
  if (code === 'EPIPE' || code === 'ERR_STREAM_DESTROYED' || unwritten) return
  unwritten = true
  process.exitCode = 2
  process.stderr.write('The answer cannot be written where it was sent; look whether there is room.\n')
})
process.stderr.on('error', () => undefined)

const status = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  env: process.env,
})
process.exitCode = unwritten ? 2 : status
