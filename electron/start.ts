import { spawn } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { LignebookError } from '../core/api/errors.ts'
import { wordFailure } from '../core/wording/failure.ts'
import { startLoopback } from './loopback/host.ts'
import { openInBrowser } from './loopback/open-in-browser.ts'
import { readPageFiles } from './page/page-files.ts'
import { libraryPlace } from './service/library-place.ts'
import { openService } from './service/open-service.ts'

const home = join(import.meta.dirname, '..')
const pageFolder = join(home, 'out', 'page')

/** The Electron program, where it is on this machine. Nothing is fetched. */
const electronProgram = (): string | null => {
  const pack = join(home, 'node_modules', 'electron')
  const named = join(pack, 'path.txt')
  const usual = { darwin: 'Electron.app/Contents/MacOS/Electron', win32: 'electron.exe' }[process.platform as string]
  const program = existsSync(named) ? readFileSync(named, 'utf8').trim() : (usual ?? 'electron')
  const file = join(process.env.ELECTRON_OVERRIDE_DIST_PATH ?? join(pack, 'dist'), program)
  return existsSync(file) ? file : null
}

const startDesktop = (program: string, library: string): void => {
  const env = { ...process.env, LIGNEBOOK_LIBRARY: library }
  spawn(program, [home], { stdio: 'inherit', env }).on('exit', (code) => process.exit(code ?? 0))
}

const startPage = async (library: string, options: { port: number; open: boolean; dev: boolean }): Promise<void> => {
  const builder = options.dev
    ? spawn('npx', ['vite', 'build', '--watch', '-c', 'renderer/vite.config.ts'], { cwd: home, stdio: 'inherit' })
    : null
  if (builder === null && !existsSync(join(pageFolder, 'index.html')))
    return stop('The page is not built yet. Run npm run build first.')
  const service = await openService({ file: library, create: true, demoFolder: join(home, 'seed-data'), recount: true })
  const built = options.dev ? null : readPageFiles(pageFolder)
  const host = await startLoopback({
    files: () => built ?? readPageFiles(pageFolder),
    dispatch: service.dispatch,
    port: options.port,
    now: () => Date.now(),
    log: () => {},
  }).catch(async (error: unknown) => {
    await service.close()
    throw error
  })
  const address = host.newAddress()
  console.log(`Lignebook is open at ${address}`)
  const again = process.stdin.isTTY ? ' Press Enter for a fresh one.' : ''
  console.log(`The address works once, within a minute.${again} Ctrl-C closes the library.`)
  if (options.open) openInBrowser(address)
  if (process.stdin.isTTY) process.stdin.on('data', () => console.log(host.newAddress()))

  const close = async () => {
    builder?.kill()
    await host.close()
    await service.close()
    process.exit(0)
  }
  process.once('SIGINT', () => void close())
  process.once('SIGTERM', () => void close())
}

const stop = (sentence: string): void => {
  console.error(sentence)
  process.exitCode = 2
}

const start = async (): Promise<void> => {
  const { values } = parseArgs({
    options: {
      library: { type: 'string' },
      port: { type: 'string' },
      'no-open': { type: 'boolean' },
      dev: { type: 'boolean' },
      browser: { type: 'boolean' },
    },
  })
  const port = Number(values.port ?? 0)
  if (!Number.isInteger(port) || (port !== 0 && port < 1024) || port > 65535)
    return stop('--port takes a number from 1024 to 65535.')
  const library = values.library ?? libraryPlace(process.env, process.platform)
  const program = electronProgram()
  const page = values.dev || values.browser || values['no-open']
  if (program !== null && !page) return startDesktop(program, library)
  if (program === null) console.log("Electron's runtime is not on this machine, so Lignebook opens in your browser.")
  await startPage(library, { port, open: !values['no-open'], dev: values.dev === true })
}

try {
  await start()
} catch (error) {
  if (error instanceof LignebookError) stop(wordFailure(error.failure))
  else if ((error as NodeJS.ErrnoException).code === 'EADDRINUSE')
    stop('That port is taken. Choose another with --port.')
  else if (String((error as NodeJS.ErrnoException).code).startsWith('ERR_PARSE_ARGS'))
    stop(`${(error as Error).message.split('. ')[0]}.`)
  else throw error
}
