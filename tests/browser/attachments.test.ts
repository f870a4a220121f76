import type { Locator, Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { smallFaxPdf, smallPdf, smallPng, smallSvg } from '../support/small-files.ts'
import { inChromium } from './support/in-chromium.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

const goTo = (page: Page, hash: string) =>
  page.evaluate((to) => {
    location.hash = to
  }, hash)

const newForm = async (page: Page) => {
  await goTo(page, '#/new')
  await page.locator('#cell-maker:focus').waitFor()
}

const addSource = async (page: Page, title: string, pageNumber: string) => {
  await page.locator('#cell-bar-source').selectOption({ label: 'new source…' })
  await page.locator('#cell-bar-title').fill(title)
  await page.locator('#cell-bar-year').press('Enter')
  await page.locator('#cell-bar-page:focus').waitFor()
  await page.keyboard.type(pageNumber)
}

const give = (page: Page, name: string, buffer: Buffer) =>
  page.locator('.scan-add input[type=file]').setInputFiles({ name, mimeType: 'image/png', buffer })

/** How wide the picture really is, as it was decoded. */
const decoded = (picture: Locator) =>
  picture.evaluate((one) => (one instanceof HTMLImageElement ? one.naturalWidth : 0))
/** How many dark points a canvas shows. */
const ink = (canvas: Locator) =>
  canvas.evaluate((one) => {
    if (!(one instanceof HTMLCanvasElement)) return 0
    const { data } = one.getContext('2d')?.getImageData(0, 0, one.width, one.height) ?? { data: [] }
    return [...data].filter((value, at) => at % 4 === 0 && value < 90).length
  })

/** As a file dropped or pasted arrives, which a test cannot do by hand. */
const arrive = (page: Page, kind: 'drop' | 'paste', name: string, bytes: Buffer) =>
  page.evaluate(
    ([event, called, base64]) => {
      const data = new DataTransfer()
      data.items.add(new File([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))], called))
      const made =
        event === 'drop'
          ? new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true })
          : new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true })
      document.querySelector('#main')?.dispatchEvent(made)
    },
    [kind, name, bytes.toString('base64')] as const,
  )

inChromium('pictures and scans', ({ open }) => {
  test('the scan of the page in hand stands beside the form while a caliber is typed', async () => {
    const { page } = await open({ viewport: { width: 1440, height: 900 } })
    await newForm(page)
    await page.keyboard.press('Alt+v')
    await page.getByText('A new caliber takes pictures once it is saved.').waitFor()
    await addSource(page, 'Tables for the bench', '44')
    await give(page, 'page-44.png', smallPng(200, 600, 800))
    await page.getByText('Added page-44.png.').waitFor()
    const scan = page.locator('.scans img')
    await scan.waitFor()
    expect(await decoded(scan)).toBe(600)

    await page.locator('#cell-bar-page').fill('45')
    await arrive(page, 'drop', 'page-45.png', smallPng(90, 500, 700))
    await page.getByRole('img', { name: 'page-45.png, page 45' }).waitFor()
    await page.locator('#cell-bar-page').fill('44')
    await page.getByRole('img', { name: 'page-44.png, page 44' }).waitFor()

    // Typing goes on in the field while the scan is turned, enlarged and moved.
    await page.locator('#cell-maker').focus()
    await page.keyboard.type('Aldervane')
    const width = async () => (await scan.boundingBox())?.width ?? 0
    const before = await width()
    await page.keyboard.press('Alt+=')
    expect(await width()).toBeCloseTo(before * 1.25, 0)
    await page.keyboard.press('Alt+Shift+ArrowDown')
    expect(await page.locator('.scans .scan-frame').evaluate((frame) => frame.scrollTop)).toBeGreaterThan(20)
    await page.keyboard.press('Alt+.')
    await page.getByRole('img', { name: 'page-45.png, page 45' }).waitFor()
    await page.keyboard.press('Alt+,')
    await page.getByRole('img', { name: 'page-44.png, page 44' }).waitFor()
    expect(await page.locator('#cell-maker').inputValue()).toBe('Aldervane')
    expect(await page.locator('#cell-maker:focus').count()).toBe(1)
    expect(await seriousFindings(page)).toEqual([])
    await page.keyboard.press('Alt+v')
    expect(await page.locator('.scans').count()).toBe(0)
  })

  test('what is no picture is refused with the reason, whatever it is called', async () => {
    const { page } = await open()
    await newForm(page)
    await page.keyboard.press('Alt+v')
    await addSource(page, 'Tables for the bench', '44')
    for (const [name, bytes, reason] of [
      ['plate.png', smallSvg, 'plate.png is an SVG drawing, which can carry a program, whatever it is called.'],
      ['sheet.pdf', Buffer.from('<!doctype html><script>1</script>'), 'sheet.pdf is a web page'],
      ['cut.png', smallPng().subarray(0, 30), 'cut.png stops before its end.'],
      ['large.png', Buffer.alloc(25_000_001), 'large.png is larger than 25 MB'],
    ] as const) {
      await give(page, name, bytes)
      await page.getByText(reason).waitFor()
    }
    expect(await page.locator('.scans .scan-frame').count()).toBe(0)
  })

  test('a PDF is drawn sheet by sheet, and opens at the page in hand', async () => {
    const { page } = await open({ viewport: { width: 1440, height: 900 } })
    await newForm(page)
    await page.keyboard.press('Alt+v')
    await addSource(page, 'Tables for the bench', '40')
    await give(page, 'pages.pdf', smallPdf('Verrin 17-220', 'Aldervane 17-430', 'Brandsma 9-2'))
    const sheet = page.locator('.scans canvas')
    await page.locator('.scans canvas[data-drawn="1"]').waitFor()
    expect(await ink(sheet)).toBeGreaterThan(100)
    await page.keyboard.press('Alt+.')
    await page.locator('.scans canvas[data-drawn="2"]').waitFor()
    expect(await ink(sheet)).toBeGreaterThan(100)
    await page.locator('#cell-bar-page').fill('42')
    await page.locator('.scans canvas[data-drawn="3"]').waitFor()
    await page.getByText('sheet 3 of 3').waitFor()
  })

  test('a PDF of a scanned page is drawn though the content policy admits no WebAssembly', async () => {
    const { page } = await open({ viewport: { width: 1440, height: 900 } })
    await newForm(page)
    await page.keyboard.press('Alt+v')
    await addSource(page, 'Tables for the bench', '12')
    await give(page, 'scan.pdf', smallFaxPdf())
    await page.locator('.scans canvas[data-drawn="1"]').waitFor()
    expect(await ink(page.locator('.scans canvas'))).toBeGreaterThan(1000)
  })

  test('the pictures of a caliber stand at the end of its page, open large, and are removed with a way back', async () => {
    const { page } = await open({ demo: true })
    await page.locator('#caliber-0').waitFor()
    await page.getByRole('combobox').press('Enter')
    await page.locator('article.caliber').waitFor()
    await give(page, 'plate.png', smallPng(200, 600, 800))
    await page.getByText('Added plate.png.').waitFor()
    await arrive(page, 'paste', 'train.png', smallPng(90, 500, 700))
    await page.getByRole('button', { name: 'train.png' }).waitFor()
    // Read only when it comes into sight.
    await page.getByRole('button', { name: 'plate.png' }).scrollIntoViewIfNeeded()
    await page.getByRole('button', { name: 'plate.png' }).locator('img').waitFor()
    for (const theme of ['day', 'night']) {
      await page.evaluate((now) => {
        document.documentElement.dataset.theme = now
      }, theme)
      expect(await seriousFindings(page)).toEqual([])
    }
    await page.getByRole('button', { name: 'plate.png' }).press('Enter')
    await page.locator('dialog img').waitFor()
    await page.keyboard.press('PageDown')
    await page.locator('dialog').getByRole('img', { name: 'train.png' }).waitFor()
    expect(await seriousFindings(page)).toEqual([])
    await page.keyboard.press('Escape')
    await page.locator('dialog').waitFor({ state: 'detached' })

    await page.getByRole('button', { name: 'plate.png' }).press('Enter')
    await page.getByRole('button', { name: 'Remove from this caliber' }).press('Enter')
    await page.getByText('Removed plate.png. Ctrl Z brings it back.').waitFor()
    await page.getByRole('button', { name: 'plate.png' }).waitFor({ state: 'detached' })
    await page.keyboard.press('Control+z')
    await page.getByRole('button', { name: 'plate.png' }).waitFor()
  })
})
