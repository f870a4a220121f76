import { existsSync } from 'node:fs'
import { join } from 'node:path'
import AxeBuilder from '@axe-core/playwright'
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import type { Transport } from '../../../core/api/dispatcher.ts'
import { startLoopback } from '../../../electron/loopback/host.ts'
import { readPageFiles } from '../../../electron/page/page-files.ts'
import { openService } from '../../../electron/service/open-service.ts'

const home = join(import.meta.dirname, '../../..')

/** Where the browser is; another place can be named, but none is ever fetched. */
const chromiumProgram = process.env.LIGNEBOOK_CHROMIUM ?? '/usr/bin/chromium'

/** Why the tests in the browser are left out, or null where they run; under CI a missing browser is a failure. */
export const leftOut: string | null =
  existsSync(chromiumProgram) || process.env.CI ? null : `there is no Chromium at ${chromiumProgram}`

export const startChromium = (...args: string[]): Promise<Browser> =>
  chromium.launch({
    executablePath: chromiumProgram,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      ...args,
    ],
  })

export interface ServedLibrary {
  readonly origin: string
  readonly newAddress: () => string
  /** Asks the library itself, past the page and its door. */
  readonly dispatch: Transport
  /** The host's log. */
  readonly log: readonly string[]
  readonly close: () => Promise<void>
}

/** A library served to this machine as `npm start` does it, with the demo in it where that is asked for. */
export const serveLibrary = async (file: string, { demo = false } = {}): Promise<ServedLibrary> => {
  const service = await openService({ file, create: true, demoFolder: join(home, 'seed-data') })
  if (demo) await service.dispatch('library.load-demo', {})
  const log: string[] = []
  const files = readPageFiles(join(home, 'out/page'))
  const host = await startLoopback({
    files: () => files,
    dispatch: service.dispatch,
    now: () => Date.now(),
    log: (line) => log.push(line),
  })
  return {
    origin: host.origin,
    newAddress: host.newAddress,
    dispatch: service.dispatch,
    log,
    close: async () => {
      await host.close()
      await service.close()
    },
  }
}

/** A page whose every error is gathered, breaches of its own content policy among them. */
export const openPage = async (context: BrowserContext, address: string): Promise<{ page: Page; errors: string[] }> => {
  const page = await context.newPage()
  const errors: string[] = []
  page.on('pageerror', (error) => errors.push(error.message))
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text())
  })
  await page.addInitScript(() =>
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sourceFile }) =>
      console.error(`content policy: ${violatedDirective} ${blockedURI} ${sourceFile}`),
    ),
  )
  await page.goto(address)
  return { page, errors }
}

/** What axe finds serious or critical, each as rule and place; of all its rules, or only of those named. */
export const seriousFindings = async (page: Page, rules?: readonly string[]): Promise<string[]> => {
  const axe = new AxeBuilder({ page }).options({ resultTypes: ['violations'] })
  const { violations } = await (rules ? axe.withRules([...rules]) : axe).analyze()
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
}
