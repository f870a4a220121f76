import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { outcomeWords } from '../../core/wording/outcome.ts'
import { inChromium } from './support/in-chromium.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

const goTo = (page: Page, hash: string) =>
  page.evaluate((to) => {
    location.hash = to
  }, hash)

const search = async (page: Page, words: string) => {
  await goTo(page, '#/')
  await page.getByRole('combobox').fill(words)
  await page.locator('.count', { hasText: 'found' }).waitFor()
}

const openCaliber = async (page: Page, designation: string) => {
  await search(page, designation)
  await page.locator('[aria-selected="true"]', { hasText: designation }).waitFor()
  await page.getByRole('combobox').press('Enter')
  await page.locator('article.caliber').waitFor()
}

const openPage = async (page: Page, hash: string, heading: string) => {
  await goTo(page, hash)
  await page.getByRole('heading', { level: 1, name: heading }).waitFor()
}

/** The form with a value that cannot be read, one that is unusual and a proof that disagrees. */
const spoilForm = async (page: Page) => {
  await openCaliber(page, '8-310')
  await page.keyboard.press('e')
  await page.locator('#cell-maker:focus').waitFor()
  await page.locator('#cell-heightMm').fill('3x4')
  await page.locator('#cell-goingHours').fill('200')
  await page.keyboard.press('F1')
  await page.keyboard.press('Control+s')
  await page.locator('#entry-refusal:focus').waitFor()
  await page.locator('.entry-proofs [data-outcome="disagrees"]').first().waitFor()
}

type Walk = Readonly<Record<string, (page: Page) => Promise<void>>>

const calibers: Walk = {
  'the list': async (page) => page.locator('#caliber-0').waitFor(),
  'what a search finds': async (page) => {
    await search(page, 'verin')
    await page.locator('.why').first().waitFor()
  },
  'nothing found': async (page) => {
    await search(page, 'zzqqxx')
    await page.getByText('Nothing in the library answers to').waitFor()
  },
  'a caliber': (page) => openCaliber(page, '8-310'),
  'an overruled finding': async (page) => {
    await openCaliber(page, '8-310')
    const actions = page.locator('.overrule-actions button')
    await actions.first().click()
    await page.locator('.overrule-reason textarea').fill('Seen on the bench')
    await page.locator('.overrule-form').getByRole('button', { name: 'Save' }).click()
    await page.locator('.proof .overrule').waitFor()
    await page.keyboard.press('Control+z')
    await page.locator('.proof .overrule').waitFor({ state: 'detached' })
    await actions.first().click()
    await page.locator('.overrule-form').getByRole('button', { name: 'Save' }).click()
    await page.locator('.overrule-form [role="alert"]').waitFor()
  },
  'the form': spoilForm,
  'an import on trial': async (page) => {
    await goTo(page, '#/import')
    const text = JSON.stringify({ maker: 'Brandsma' })
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'short.json', mimeType: 'application/json', buffer: Buffer.from(text) })
    await page.getByRole('alert').waitFor()
    const table = 'maker,designation,thirdWheel\nBrandsma,9-2,75\nVerrin,17-220,57\n'
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'table.csv', mimeType: 'text/csv', buffer: Buffer.from(table) })
    await page.getByRole('region', { name: 'What would be done' }).waitFor()
  },
  'a table': (page) => openPage(page, '#/table', 'Enter a table'),
  'a merge': (page) => openPage(page, '#/caliber/1/merge', 'Merge another caliber'),
}

const bench: Walk = {
  'missing counts': (page) => openPage(page, '#/caliber/1/missing', 'Missing counts'),
  'the springs': (page) => openPage(page, '#/springs', 'Springs'),
  'gauge tables': (page) => openPage(page, '#/gauges', 'Gauge tables'),
  'the spring of a caliber': (page) => openPage(page, '#/caliber/1/spring', 'Spring of'),
  'the order list': (page) => openPage(page, '#/orders', 'Order list'),
  'rate and amplitude': (page) => openPage(page, '#/rate/1', 'Rate and amplitude'),
  'counted on the bench': (page) => openPage(page, '#/caliber/1/counted', 'Counted on the bench'),
  'play on the bench': (page) => openPage(page, '#/play/1', 'Play on the bench'),
}

const book: Walk = {
  'the proofs': async (page) => {
    await openPage(page, '#/proofs', 'Proofs')
    await page.locator('.sheet-line').first().waitFor()
  },
  'the sources': (page) => openPage(page, '#/sources', 'Sources'),
  'the history': (page) => openPage(page, '#/history', 'History'),
  'the glossary': (page) => openPage(page, '#/glossary', 'Glossary'),
  'the commands': async (page) => {
    await page.locator('#caliber-0').waitFor()
    await page.keyboard.press('Control+k')
    await page.getByRole('dialog', { name: 'Commands' }).waitFor()
  },
  'the keys': async (page) => {
    await page.locator('#caliber-list').focus()
    await page.keyboard.press('?')
    await page.getByRole('dialog', { name: 'Keys' }).waitFor()
  },
}

/** Each place that a person can come to, from a library with the demo in it. */
const walks: readonly (readonly [name: string, places: Walk])[] = [
  ['the calibers', calibers],
  ['the bench', bench],
  ['the rest of the book', book],
]

/** What is found at each place of a walk, each place come to afresh. */
const lookAlong = async (
  places: Walk,
  page: Page,
  look: (page: Page) => Promise<string[]>,
): Promise<Record<string, string[]>> => {
  const found: Record<string, string[]> = {}
  for (const [name, come] of Object.entries(places)) {
    await goTo(page, '#/')
    await page.reload()
    await come(page)
    found[name] = await look(page)
  }
  return found
}

const nothing = (places: Walk) => Object.fromEntries(Object.keys(places).map((name) => [name, []]))

/** How far the page reaches past its right edge, in px, and what reaches furthest. */
const overflow = (page: Page) =>
  page.evaluate(() => {
    const wide = document.documentElement.clientWidth
    const over = Math.max(document.documentElement.scrollWidth, document.body.scrollWidth) - wide
    // The page itself may hide what reaches past it: then the reader cannot come to it.
    const hidden = [...document.querySelectorAll<HTMLElement>('.frame, .page, .page > *')]
      .filter((one) => one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).display !== 'inline')
      .map((one) => `${one.className} reaches ${one.scrollWidth - one.clientWidth} px past itself`)
    return over > 0 ? [`the page reaches ${over} px past ${wide} px`, ...hidden] : hidden
  })

const wordsOfOutcomes = (page: Page) =>
  page.locator('.proofs [data-outcome]').evaluateAll((all) =>
    all.map((one) => ({
      outcome: one.getAttribute('data-outcome') ?? '',
      word: one.querySelector('.outcome-word')?.textContent ?? '',
      seen: one.querySelector('.outcome-word')?.checkVisibility({ opacityProperty: true, visibilityProperty: true }),
      marked: one.querySelector('.outcome-mark path')?.getBoundingClientRect().width !== 0,
    })),
  )

const pdfToText = (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, 'pdftotext')))
if (!pdfToText) console.warn('Left out: what is printed is not read back, because there is no pdftotext.')

/** What the other theme can break: all else is the same page. */
const colourRules = ['color-contrast', 'link-in-text-block']

inChromium('looks', ({ open, newFile }) => {
  for (const theme of ['light', 'dark'] as const) {
    const rules = theme === 'dark' ? colourRules : undefined
    test(`axe finds nothing serious in an empty library in the ${theme}`, async () => {
      const { page } = await open({ colorScheme: theme })
      await page.getByRole('heading', { name: 'This library is empty' }).waitFor()
      expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe(theme === 'dark' ? 'night' : 'day')
      expect(await seriousFindings(page, rules)).toEqual([])
    })
    test.each(walks)(`axe finds nothing serious in %s in the ${theme}`, { timeout: 120_000 }, async (_, places) => {
      const { page } = await open({ colorScheme: theme, demo: true })
      expect(await lookAlong(places, page, (there) => seriousFindings(there, rules))).toEqual(nothing(places))
    })
  }

  for (const [size, width, text] of [
    ['320 px', 320, 1],
    ['400 px', 400, 1],
    ['1280 px', 1280, 1],
    ['1280 px at 200 % text', 1280, 2],
  ] as const)
    test.each(walks)(`nothing reaches past the page at ${size} in %s`, async (_, places) => {
      const { page } = await open({ demo: true, viewport: { width, height: 800 } })
      await page.evaluate((share) => localStorage.setItem('lignebook.text-size', String(share)), text)
      expect(await lookAlong(places, page, overflow)).toEqual(nothing(places))
    })

  test('with the colours of the system every outcome still has its word and its shape', async () => {
    const { page } = await open({ demo: true, forcedColors: 'active', reducedMotion: 'reduce' })
    await openCaliber(page, '8-310')
    const proofs = await wordsOfOutcomes(page)
    expect(proofs.length).toBeGreaterThan(5)
    const words: Readonly<Record<string, { readonly word: string }>> = outcomeWords
    for (const { outcome, word, seen, marked } of proofs)
      expect({ outcome, word, seen, marked }).toEqual({ outcome, word: words[outcome]?.word, seen: true, marked: true })
    await search(page, '8-310')
    await page.locator('[aria-selected="true"] .badge', { hasText: '2 disagree' }).waitFor()
  })

  test('with less motion nothing moves', async () => {
    const { page } = await open({ demo: true, reducedMotion: 'reduce' })
    await openCaliber(page, '8-310')
    const moving = await page.evaluate(
      () =>
        [...document.querySelectorAll('*')].filter((one) => {
          const { transitionDuration, animationName, animationDuration } = getComputedStyle(one)
          return transitionDuration !== '0s' || (animationName !== 'none' && animationDuration !== '0s')
        }).length,
    )
    expect(moving).toBe(0)
  })

  test.skipIf(!pdfToText)('a caliber is printed with spring, beat, sizes and proofs as text', async () => {
    const { page } = await open({ demo: true, colorScheme: 'dark' })
    await openCaliber(page, '8-310')
    const file = `${newFile()}.pdf`
    await page.pdf({ path: file, preferCSSPageSize: true })
    const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).replace(/[^\S\n]+/gu, ' ')
    expect(text).toContain('Verrin 8-310')
    expect(text).toContain('1.25 × 0.105 × 245 mm')
    expect(text).toContain('18 000 vph')
    expect(text).toMatch(/Proofs/)
    expect(text).toContain('disagrees')
    // As on paper: each number over the other, then the same cancelled.
    expect(text).toMatch(/\n ?80 57 80\n ?× × × 2 × 15 = 13 680\n ?10 10 8\n/)
    expect(text).toContain('= 8 × 57 × 2 × 15 = 13 680')
    expect(text).toContain('Rule: W. Derham, The Artificial Clock-maker, 1696')
    expect(text).toContain('mainspring')
    expect(text).not.toContain('Back to the list')
  })
})
