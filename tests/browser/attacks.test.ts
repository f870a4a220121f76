import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'
import type { ServedLibrary } from './support/lignebook-in-chromium.ts'

/** A page of somebody else's, on another port of this machine; `evil.test` leads to this machine too. */
const foreign = createServer((_, response) => {
  response.writeHead(200, { 'Content-Type': 'text/html' })
  response.end('<!doctype html><title>Somebody else</title><iframe name="hidden"></iframe>')
})
let foreignPort = 0
beforeAll(async () => {
  await new Promise<void>((done) => foreign.listen(0, '127.0.0.1', done))
  foreignPort = (foreign.address() as AddressInfo).port
})
afterAll(() => foreign.close())

/** All that the library holds, as its owner would see it. */
const contents = async ({ dispatch }: ServedLibrary) =>
  JSON.stringify([
    await dispatch('exchange.export', {}),
    await dispatch('history.list', { limit: 100 }),
    await dispatch('draft.read', { caliberId: null }),
  ])

/** Tries all that a page can try against a host, and gives back what the page could read of each answer. */
const attack = (page: Page, target: string, token: string): Promise<Record<string, string>> =>
  page.evaluate(
    async ({ target, token }) => {
      const read = async (path: string, init: RequestInit): Promise<string> => {
        try {
          const response = await fetch(`${target}${path}`, { credentials: 'include', ...init })
          return `${response.type} ${response.status} ${await response.text()}`
        } catch {
          return 'nothing'
        }
      }
      const json = { 'Content-Type': 'application/json' }
      const page = JSON.stringify({ offset: 0, limit: 100 })
      const first = JSON.stringify({ id: 1 })
      const got: Record<string, string> = {
        'GET of the page': await read('/', {}),
        'GET of the page, no-cors': await read('/', { mode: 'no-cors' }),
        'GET of a call': await read('/api/calibers.page', { mode: 'no-cors' }),
        'POST of a reading call': await read('/api/calibers.page', { method: 'POST', headers: json, body: page }),
        'POST of a reading call with the token': await read('/api/calibers.page', {
          method: 'POST',
          headers: { ...json, Authorization: `Bearer ${token}` },
          body: page,
        }),
        'POST of a writing call, no-cors': await read('/api/caliber.remove', {
          method: 'POST',
          mode: 'no-cors',
          headers: { 'Content-Type': 'text/plain' },
          body: first,
        }),
        'POST of a writing call with the token': await read('/api/caliber.remove', {
          method: 'POST',
          headers: { ...json, Authorization: `Bearer ${token}` },
          body: first,
        }),
        'POST for a session': await read('/session', { method: 'POST', headers: json, body: '{"code":"guess"}' }),
      }
      navigator.sendBeacon(`${target}/api/history.undo`, '{}')

      const form = document.createElement('form')
      Object.assign(form, {
        method: 'POST',
        action: `${target}/api/history.undo`,
        target: 'hidden',
        enctype: 'text/plain',
      })
      form.innerHTML = `<input name='{"id":1,"x":"' value='"}'>`
      document.body.append(form)
      const frame = document.querySelector('iframe')
      const answered = new Promise((done) => frame?.addEventListener('load', done, { once: true }))
      form.submit()
      await answered
      try {
        got.form = frame?.contentDocument?.body.textContent || 'nothing'
      } catch {
        got.form = 'nothing'
      }

      const loaded = (tag: 'img' | 'script', path: string) =>
        new Promise<string>((done) => {
          const element = document.createElement(tag)
          element.addEventListener('load', () => done('loaded'))
          element.addEventListener('error', () => done('nothing'))
          element.src = `${target}${path}`
          document.body.append(element)
        })
      got.image = await loaded('img', '/api/calibers.page')
      got.script = await loaded('script', '/api/calibers.page')

      got.WebSocket = await new Promise<string>((done) => {
        const socket = new WebSocket(`${target.replace('http', 'ws')}/api/calibers.page`)
        socket.onopen = () => done('open')
        socket.onerror = () => done('nothing')
      })
      return got
    },
    { target, token },
  )

/** What a page may read at most: that there was an answer, or that it is forbidden. */
const harmless = /^(nothing|opaque 0 |basic (421|403) \{"ok":false,"failure":\{"code":"forbidden","details":\{\}\}\})$/

inChromium(
  'pages of somebody else',
  ({ browser, open }) => {
    /** The owner's page with its session, and a page of somebody else's in the same browser. */
    const besides = async () => {
      const { host, page: own } = await open({ demo: true })
      await own.locator('#caliber-0').waitFor()
      const token = await own.evaluate(() => sessionStorage.getItem('lignebook.token') ?? '')
      expect(token.length).toBeGreaterThan(40)
      const page = await own.context().newPage()
      return { host, own, page, token, port: new URL(host.origin).port }
    }

    const unharmed = async (host: ServedLibrary, own: Page, before: string) => {
      expect(await contents(host)).toBe(before)
      await own.reload()
      await own.locator('#caliber-0').waitFor()
    }

    test.each(['127.0.0.1', 'localhost', 'evil.test'])(
      'a page on another port of %s reads nothing and changes nothing',
      async (name) => {
        const { host, own, page, token } = await besides()
        const before = await contents(host)
        await page.goto(`http://${name}:${foreignPort}/`)
        const asked = host.log.length
        const got = await attack(page, host.origin, token)
        for (const answer of Object.values(got)) expect(answer).toMatch(/^(nothing|opaque 0 )$/)
        const lines = host.log.slice(asked)
        // The requests did come to the door; it is there that they were turned away.
        expect(lines).toContain('POST /api/caliber.remove 403')
        expect(lines).toContain('POST /api/history.undo 403')
        expect(lines).toContain('OPTIONS /api/calibers.page 403')
        expect(lines.filter((line) => line.includes('/api/') && line.endsWith(' 200'))).toEqual([])
        await unharmed(host, own, before)
      },
    )

    test('a foreign name that now leads to the host reads nothing and changes nothing, even with the token', async () => {
      const { host, own, page, token, port } = await besides()
      const before = await contents(host)
      const rebound = `http://evil.test:${port}`
      // The page as it was loaded before the name was made to lead elsewhere.
      await page.route(`${rebound}/before`, (route) =>
        route.fulfill({ contentType: 'text/html', body: '<!doctype html><iframe name="hidden"></iframe>' }),
      )
      await page.goto(`${rebound}/before`)
      const asked = host.log.length
      const got = await attack(page, rebound, token)
      for (const answer of Object.values(got)) expect(answer).toMatch(harmless)
      expect(got['GET of the page']).toMatch(/^basic 421 /)
      expect(got['POST of a writing call with the token']).toMatch(/^basic 421 /)
      const lines = host.log.slice(asked)
      expect(lines.length).toBeGreaterThan(8)
      expect(lines.filter((line) => !line.endsWith(' 421'))).toEqual([])
      await unharmed(host, own, before)
    })

    test('opened by a link or framed by somebody else, the page shows no caliber', async () => {
      const { host, own, page } = await besides()
      const before = await contents(host)
      await page.goto(`http://evil.test:${foreignPort}/`)
      await page.evaluate((address) => {
        const frame = document.createElement('iframe')
        frame.src = address
        document.body.append(frame)
      }, `${host.origin}/`)
      await expect.poll(() => host.log.at(-1)).toMatch(/^GET \/ /)
      await page.waitForTimeout(200)
      for (const frame of page.frames()) expect(await frame.locator('#main').count()).toBe(0)

      await page.evaluate((address) => {
        const link = document.createElement('a')
        link.href = address
        link.textContent = 'Look'
        document.body.append(link)
      }, `${host.origin}/#code=guess`)
      await page.getByRole('link', { name: 'Look' }).click()
      await page
        .getByText(/not, or no longer, allowed to open the library/)
        .first()
        .waitFor()
      expect(await page.locator('.caliber-row').count()).toBe(0)
      expect(page.url()).not.toContain('guess')
      await unharmed(host, own, before)
    })

    test('a window that somebody else opens cannot be reached from there', async () => {
      const { host, page } = await besides()
      await page.goto(`http://127.0.0.1:${foreignPort}/`)
      const [opened] = await Promise.all([
        page.context().waitForEvent('page'),
        page.evaluate((address) => {
          Object.assign(window, { opened: window.open(address) })
        }, `${host.origin}/`),
      ])
      await opened.locator('#main').waitFor()
      expect(await opened.evaluate(() => window.opener)).toBeNull()
      expect(await page.evaluate(() => (window as { opened?: Window }).opened?.closed)).toBe(true)
      expect(browser().contexts().length).toBe(1)
    })
  },
  // Chromium's own guard of this machine is off: ours must hold without it, as in browsers that have none.
  ['--host-resolver-rules=MAP evil.test 127.0.0.1', '--disable-features=LocalNetworkAccessChecks'],
)
