import { join } from 'node:path'
import AxeBuilder from '@axe-core/playwright'
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { startLoopback } from '../../../electron/loopback/host.ts'
import { readPageFiles } from '../../../electron/page/page-files.ts'
import { openService } from '../../../electron/service/open-service.ts'

const home = join(import.meta.dirname, '../../..')

export const startChromium = (): Promise<Browser> =>
  chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })

/** A library served to this machine as `npm start` does it; `close` is what a killed host leaves behind as well. */
export const serveLibrary = async (file: string) => {
  const service = await openService({ file, create: true, demoFolder: join(home, 'seed-data') })
  const files = readPageFiles(join(home, 'out/page'))
  const host = await startLoopback({
    files: () => files,
    dispatch: service.dispatch,
    now: () => Date.now(),
    log: () => undefined,
  })
  return {
    origin: host.origin,
    newAddress: host.newAddress,
    close: async () => {
      await host.close()
      await service.close()
    },
  }
}

/** A page whose every error is gathered; an error of the page itself is an error of the test. */
export const openPage = async (context: BrowserContext, address: string): Promise<{ page: Page; errors: string[] }> => {
  const page = await context.newPage()
  const errors: string[] = []
  page.on('pageerror', (error) => errors.push(error.message))
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text())
  })
  await page.goto(address)
  return { page, errors }
}

/** What axe finds serious or critical, each as rule and place. */
export const seriousFindings = async (page: Page): Promise<string[]> => {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
}
