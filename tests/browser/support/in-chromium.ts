import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect } from 'vitest'
import { type KillableHost, startKillableHost } from './killable-host.ts'
import { leftOut, openPage, type ServedLibrary, serveLibrary, startChromium } from './lignebook-in-chromium.ts'

export interface Opened {
  readonly page: Page
  readonly host: ServedLibrary
}

/** What a test may ask for; all of it is put away after the test. */
export interface Stage {
  readonly browser: () => Browser
  /** A library file of this test alone, not yet there. */
  readonly newFile: () => string
  readonly serve: (file: string, options?: { demo?: boolean }) => Promise<ServedLibrary>
  /** A host in a process of its own; a page opened after it is closed before it. */
  readonly serveKillable: (file: string) => Promise<KillableHost>
  /** The page at an address, usable; an error on it fails the test unless errors are `awaited`. */
  readonly visit: (address: string, options?: BrowserContextOptions & { awaited?: RegExp }) => Promise<Page>
  /** A fresh library and its page. */
  readonly open: (options?: BrowserContextOptions & { demo?: boolean }) => Promise<Opened>
}

/** Tests that share a browser and nothing else. Without a browser they are left out, and that is said. */
export const inChromium = (title: string, tests: (stage: Stage) => void, args: readonly string[] = []): void => {
  if (leftOut !== null) console.warn(`Left out: ${title}, because ${leftOut}.`)
  describe.skipIf(leftOut !== null)(title, () => {
    let started: Browser | undefined
    let folder = ''
    let files = 0
    const putAway: (() => Promise<void>)[] = []
    const gathered: { errors: string[]; awaited: RegExp | undefined }[] = []

    beforeAll(async () => {
      started = await startChromium(...args)
      folder = mkdtempSync(join(tmpdir(), 'lignebook-page-'))
    })
    afterEach(async () => {
      for (const put of putAway.splice(0).reverse()) await put()
      const unawaited = gathered
        .splice(0)
        .flatMap(({ errors, awaited }) => errors.filter((error) => awaited?.test(error) !== true))
      expect(unawaited).toEqual([])
    })
    afterAll(async () => {
      await started?.close()
      rmSync(folder, { recursive: true, force: true })
    })

    const browser = (): Browser => {
      if (started === undefined) throw new Error('the browser is there only while a test runs')
      return started
    }
    const newFile: Stage['newFile'] = () => {
      files += 1
      return join(folder, `library-${files}.sqlite`)
    }
    const serve: Stage['serve'] = async (file, options) => {
      const host = await serveLibrary(file, options)
      let closed = false
      const close = async () => {
        if (closed) return
        closed = true
        await host.close()
      }
      putAway.push(close)
      return { ...host, close }
    }
    const serveKillable: Stage['serveKillable'] = async (file) => {
      const host = await startKillableHost(file)
      putAway.push(host.kill)
      return host
    }
    const visit: Stage['visit'] = async (address, { awaited, ...options } = {}) => {
      const context = await browser().newContext({ viewport: { width: 1280, height: 800 }, ...options })
      putAway.push(() => context.close())
      const { page, errors } = await openPage(context, address)
      gathered.push({ errors, awaited })
      await page.locator('#main h1').waitFor()
      return page
    }
    const open: Stage['open'] = async ({ demo = false, ...options } = {}) => {
      const host = await serve(newFile(), { demo })
      const page = await visit(host.newAddress(), options)
      return { host, page }
    }
    tests({ browser, newFile, serve, serveKillable, visit, open })
  })
}
