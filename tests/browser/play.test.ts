import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'
import { keyboardOf } from './support/keyboard.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

const openCaliber = async (page: Page, designation: string) => {
  await page.getByRole('combobox').fill(designation)
  await page.locator('[aria-selected="true"]', { hasText: designation }).waitFor()
  await page.getByRole('combobox').press('Enter')
  await page.locator('article.caliber').waitFor()
}

const openPlay = async (page: Page, designation: string) => {
  await openCaliber(page, designation)
  await page.keyboard.press('k')
  await page.locator('input[name="balance.end.play"]:focus').waitFor()
}

const goTo = (page: Page, hash: string) =>
  page.evaluate((to) => {
    location.hash = to
  }, hash)

const fill = (page: Page, cell: string, text: string) => page.locator(`input[name="${cell}"]`).fill(text)
const told = (page: Page, row: string) => page.locator(`#${row}-told`)
const strip = (page: Page, cell: string) =>
  page.locator('.play-row', { has: page.locator(`input[name="${cell}"]`) }).getByRole('img')

const pdfToText = (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, 'pdftotext')))

inChromium('play on the bench', ({ open, newFile }) => {
  test('is tried arbor by arbor from the balance on, by keys alone, and kept', async () => {
    const { page } = await open({ demo: true })
    const keys = await keyboardOf(page)
    await openPlay(page, '17-220')
    await page.getByText('Nothing is measured yet.').waitFor()
    expect(await page.locator('.play-arbor h3').allTextContents()).toEqual([
      'Balance',
      'Lever',
      'Escape wheel',
      'Fourth wheel',
      'Third wheel',
      'Centre wheel',
      'Barrel on its still arbor',
      'Barrel arbor in the plates',
    ])
    await keys.type('0,010')
    await told(page, 'balance-end').getByText('below').waitFor()
    expect(await told(page, 'balance-end').textContent()).toBe(
      '▽ below 0.01 ± 0.0005 mmLess than was found in fine watches. Too little freedom causes more stoppages than too much. The book calls it more harmful than too long a play of the lever.',
    )
    await keys.press('Enter')
    await keys.type('0.120')
    await told(page, 'balance-upper').getByText('Type the pivot too').waitFor()
    await keys.press('Enter')
    await keys.type('0.110')
    await told(page, 'balance-upper').getByText('0.01 ± 0.001 mm').waitFor()
    expect(await page.locator('input[name="balance.upper.play"]').inputValue()).toBe('0.01')
    expect(await told(page, 'balance-upper').textContent()).toContain('✓ within')
    await keys.press('ArrowDown')
    await keys.press('ArrowDown')
    await page.locator('input[name="balance.lower.hole"]:focus').waitFor()
    await page.getByText('2 measured: 1 within, 1 below.').waitFor()

    await keys.press('Escape')
    await page.locator('article.caliber').waitFor()
    await keys.press('k')
    await page.locator('input[name="balance.end.play"]:focus').waitFor()
    expect(await page.locator('input[name="balance.end.play"]').inputValue()).toBe('0,010')
    await page.getByRole('button', { name: 'Clear' }).press('Enter')
    await page.getByText('Nothing is measured yet.').waitFor()
    expect(await keys.mouse()).toBeNull()
  })

  test('hundredths and thousandths are read, and what a reading may be off decides what can be told', async () => {
    const { page } = await open({ demo: true })
    await openPlay(page, '17-220')
    await fill(page, 'third.end.play', '4/100')
    await page.getByText('= 0.04 mm').waitFor()
    expect(await told(page, 'third-end').textContent()).toContain('✓ within 0.04 ± 0.005 mm')
    expect(await strip(page, 'third.end.play').getAttribute('aria-labelledby')).not.toBeNull()
    expect(await strip(page, 'third.end.play').textContent()).toBe('From 0.03 to 0.05 mm; measured 0.04 ± 0.005 mm.')
    await fill(page, 'third.upper.play', '18/1000')
    await told(page, 'third-upper').getByText('within').first().waitFor()
    await fill(page, 'offMm', '0.005')
    await told(page, 'third-upper').getByText('cannot tell').waitFor()
    await fill(page, 'third.upper.play', '0.018 ±0.001')
    await told(page, 'third-upper').getByText('within').first().waitFor()
    await fill(page, 'third.lower.play', '0.040')
    await fill(page, 'third.upper.play', '0.005')
    await page.getByText('One pivot is wide and the other close').waitFor()
  })

  test('says in one sentence what cannot be read or cannot be, and keeps it as typed', async () => {
    const { page } = await open({ demo: true })
    await goTo(page, '#/play')
    await fill(page, 'fourth.end.play', 'max 0.05')
    await page.getByText('Fourth wheel, end-shake: "max 0.05" is one limit only').waitFor()
    expect(await page.locator('input[name="fourth.end.play"]').inputValue()).toBe('max 0.05')
    expect(await page.locator('input[name="fourth.end.play"]').getAttribute('aria-invalid')).toBe('true')
    await fill(page, 'fourth.upper.hole', '0.20')
    await fill(page, 'fourth.upper.pivot', '0.21')
    await page.getByText('A pivot of 0.21 mm does not go into a hole of 0.2 mm. Measure both again.').waitFor()
    await page.getByText('Nothing is measured yet.').waitFor()
  })

  test('the maker’s figure goes before the book', async () => {
    const { page } = await open({ demo: true })
    await openPlay(page, '17-220')
    await fill(page, 'lever.end.play', '0.050')
    await told(page, 'lever-end').getByText('The book calls it less harmful').waitFor()
    await page.getByLabel('Type the maker’s figures').press('Space')
    await fill(page, 'lever.end.maker', '0.03…0.06')
    await told(page, 'lever-end').getByText('Within what the maker states.').waitFor()
    expect(
      await page.locator('.play-row', { has: page.locator('input[name="lever.end.maker"]') }).textContent(),
    ).toContain('0.03 to 0.06 mm, the maker’s figure')
  })

  test('a cylinder goes by its pivot, a clock by its own figures', async () => {
    const { page } = await open({ demo: true })
    await openPlay(page, '13-C')
    expect(await page.locator('#play-movement').inputValue()).toBe('cylinder')
    expect(await page.locator('.play-arbor h3').allTextContents()).not.toContain('Lever')
    await fill(page, 'balance.upper.play', '0.010')
    await told(page, 'balance-upper').getByText('type hole and pivot').waitFor()
    await fill(page, 'balance.upper.hole', '0.150')
    await fill(page, 'balance.upper.pivot', '0.120')
    await told(page, 'balance-upper').getByText('within').first().waitFor()
    await fill(page, 'cylinderMm', '0.88')
    await page.getByText('about an eighth of it, 0.11 mm').waitFor()

    await page.locator('#play-movement').selectOption('clock')
    await fill(page, 'third.upper.hole', '1.20')
    await fill(page, 'third.upper.pivot', '0.75')
    await told(page, 'third-upper').getByText('It has reached half the pivot').waitFor()
  })

  test('the freedoms of the lever are judged in degrees, and what a jar leaves of the lock', async () => {
    const { page } = await open({ demo: true })
    await openPlay(page, '17-220')
    await fill(page, 'lever.lock', '1 1/2')
    await fill(page, 'lever.run', '1/2')
    await fill(page, 'lever.edge', '1 1/4')
    await page.getByText('0.75° of lock is left').waitFor()
    await fill(page, 'lever.drop', '2.0')
    await told(page, 'lever-drop').getByText('above').waitFor()
    await page.locator('#tooth-form').selectOption('ratchet')
    await told(page, 'lever-drop').getByText('within').waitFor()
    await fill(page, 'wheelMm', '7.5')
    await told(page, 'lever-drop').getByText('0.131 mm').waitFor()
  })

  test('what was measured is copied as text', async () => {
    const { page } = await open({ demo: true, permissions: ['clipboard-read', 'clipboard-write'] })
    await openPlay(page, '17-220')
    await fill(page, 'centre.end.play', '0.040')
    await fill(page, 'lever.run', '1/4')
    await page.getByRole('button', { name: 'Copy' }).press('Enter')
    await page.getByText('Copied what was measured.').waitFor()
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(
      [
        'Play on the bench: Verrin 17-220',
        'Centre wheel, end-shake: 0.04 ± 0.0005 mm, within (0.03 to 0.05 mm: Kleinlein 1920, p. 35)',
        'Run to the banking: 0.25°, within (0.25 to 0.5°: Playtner 1910, p. 15)',
      ].join('\n'),
    )
  })

  test('is reached from the other pages of the bench and from the commands', async () => {
    const { page } = await open({ demo: true })
    await goTo(page, '#/rate')
    await page.getByRole('link', { name: 'Play', exact: true }).press('Enter')
    await page.getByRole('heading', { level: 1, name: 'Play on the bench' }).waitFor()
    expect(await page.locator('.play-arbor').count()).toBe(11)
    await page.keyboard.press('Escape')
    await page.locator('#caliber-0').waitFor()
    await page.keyboard.press('Control+k')
    await page.keyboard.type('play on')
    await page.getByRole('option', { name: /Play on the bench/ }).waitFor()
    await page.keyboard.press('Enter')
    await page.locator('input[name="balance.end.play"]:focus').waitFor()
    await page.keyboard.press('Escape')
    await openCaliber(page, '17-220')
    await page.getByRole('link', { name: 'Counted on the bench' }).press('Enter')
    await page.getByRole('link', { name: 'Play', exact: true }).press('Enter')
    await page.locator('input[name="balance.end.play"]:focus').waitFor()
  })

  test('keeps within 400 px and is sound to axe by day and night, with every part of it filled', async () => {
    const { page } = await open({ demo: true, viewport: { width: 400, height: 800 } })
    await openCaliber(page, '17-220')
    await page.getByRole('link', { name: 'Play', exact: true }).press('Enter')
    await page.getByLabel('Type the maker’s figures').press('Space')
    await fill(page, 'centre.end.play', '0.020')
    await fill(page, 'centre.upper.play', '0.3')
    await fill(page, 'centre.lower.play', '0.005')
    await fill(page, 'third.end.play', '0.03')
    await fill(page, 'third.upper.play', 'x')
    await fill(page, 'lever.lock', '1')
    await page.getByText('"x" cannot be read').waitFor()
    for (const theme of ['day', 'night']) {
      await page.evaluate((name) => document.documentElement.setAttribute('data-theme', name), theme)
      expect(await seriousFindings(page), theme).toEqual([])
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(
      0,
    )
  })

  test.skipIf(!pdfToText)(
    'is printed with its verdicts, their sources and the cautions, from the first page on',
    async () => {
      const { page } = await open({ demo: true, colorScheme: 'dark' })
      await openPlay(page, '17-220')
      await fill(page, 'balance.end.play', '0.010')
      await told(page, 'balance-end').getByText('below').waitFor()
      const file = `${newFile()}.pdf`
      await page.pdf({ path: file, preferCSSPageSize: true })
      const text = execFileSync('pdftotext', ['-layout', '-l', '1', file, '-'], { encoding: 'utf8' }).replace(
        /\s+/gu,
        ' ',
      )
      expect(text).toContain('Verrin 17-220')
      expect(text).toContain('never push with force')
      expect(text).toContain('▽ below 0.01 ± 0.0005 mm')
      expect(text).toContain('Kleinlein 1920, p. 35')
      expect(text).toContain('Escape')
      expect(text).not.toContain('Back to the caliber')
    },
  )
})
