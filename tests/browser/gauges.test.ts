import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { createClient } from '../../core/api/client.ts'
import { blankEntry } from '../../core/record/entry.ts'
import { gaugeTableOf } from '../support/gauge-table-of.ts'
import { inChromium } from './support/in-chromium.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

const goTo = (page: Page, hash: string) =>
  page.evaluate((place) => {
    location.hash = place
  }, hash)

const withGauge = (springGauge: string, more: Readonly<Record<string, string>> = {}) => ({
  ...blankEntry(),
  maker: 'Verrin',
  designation: '11-300',
  fields: Object.fromEntries(
    Object.entries({ springGauge, ...more }).map(([key, printed]) => [key, [{ printed, chosen: true }]]),
  ),
})

inChromium('gauge tables', ({ open }) => {
  test('a table is entered by keyboard alone, pasted, corrected, saved, removed and brought back', async () => {
    const { page, host } = await open()
    const client = createClient(host.dispatch)
    await goTo(page, '#/gauges')
    await page.getByText('No gauge table is in the library').waitFor()
    await page.keyboard.press('a')
    await page.keyboard.type('Harrow')
    for (let on = 0; on < 6; on += 1) await page.keyboard.press('Enter')
    await page.keyboard.type('14')
    await page.keyboard.press('Enter')
    await page.keyboard.type('12/100')
    await page.getByText('= 0.12 mm').waitFor()
    await page.keyboard.press('Enter')
    await page.evaluate(() => {
      const data = new DataTransfer()
      data.setData('text/plain', 'No.;mm\r\n13;0,13\r\n2/0;17\r\n14;0.14')
      document.activeElement?.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      )
    })
    await page.getByText('Row 3: size: "17" comes to 17').waitFor()
    await page.getByText('Row 4: number "14" stands in row 1 already').waitFor()
    await page.keyboard.press('Control+s')
    await page.getByText('Not saved: 2 rows cannot be read. Nothing is lost.').waitFor()
    expect((await client('gauges.list', {})).gauges).toEqual([])
    await page.getByLabel('Size in row 3').fill('0.27')
    await page.getByLabel('Take out row 4').focus()
    await page.keyboard.press('Enter')
    await page.getByLabel('Number in row 1').focus()
    await page.keyboard.press('Control+s')
    await page.getByRole('button', { name: 'Harrow', exact: true }).waitFor()
    const { gauges } = await client('gauges.list', {})
    expect(gauges).toMatchObject([
      {
        name: 'Harrow',
        measures: 'thickness',
        rows: [
          { number: '14', mm: 0.12, printed: '12/100' },
          { number: '13', mm: 0.13 },
          { number: '2/0', mm: 0.27 },
        ],
      },
    ])
    await page.getByRole('button', { name: 'Harrow', exact: true }).focus()
    await page.keyboard.press('Delete')
    await page.getByText('No gauge table is in the library').waitFor()
    await page.keyboard.press('Control+z')
    await page.getByRole('button', { name: 'Harrow', exact: true }).waitFor()
    expect((await page.pdf()).length).toBeGreaterThan(1000)
  })

  test('what was typed and not saved is there again after leaving and after a reload, and can be discarded', async () => {
    const { page } = await open()
    await goTo(page, '#/gauges')
    await page.getByText('No gauge table is in the library').waitFor()
    await page.keyboard.press('a')
    await page.keyboard.type('Harrow')
    await page.getByLabel('Number in row 1').fill('14')
    await page.getByLabel('Number in row 1').press('Escape')
    await page.getByText('No gauge table is in the library').waitFor()
    await page.reload()
    await page.getByText('No gauge table is in the library').waitFor()
    await page.keyboard.press('a')
    expect(await page.getByLabel('Number in row 1').inputValue()).toBe('14')
    await page.getByRole('button', { name: 'Discard it' }).click()
    expect(await page.getByLabel('Number in row 1').inputValue()).toBe('')
  })

  test('a printed gauge is looked up beside the spring, and its size is taken over by hand alone', async () => {
    const { page, host } = await open()
    const client = createClient(host.dispatch)
    const { id } = await client('caliber.save', { caliberId: null, entry: withGauge('Harrow, strength 2/0') })
    await goTo(page, `#/caliber/${id}/spring`)
    await page.getByText('Harrow, strength 2/0').first().waitFor()
    expect(await page.getByText('by your table').count()).toBe(0)
    const table = gaugeTableOf('Harrow', { '2/0': 0.27 }, { page: '9' })
    await client('gauge.save', { id: null, table })
    await page.reload()
    await page.getByText('Thickness no. 2/0 by your table Harrow: 0.27 mm.').waitFor()
    const before = (await client('caliber.read', { id })).entry
    expect(before.fields.springThicknessMm).toBeUndefined()
    await page.getByRole('button', { name: 'Use 0.27 mm' }).click()
    await page.getByText(/agrees with the stated thickness of 0.27 mm/).waitFor()
    const { fields } = (await client('caliber.read', { id })).entry
    expect(fields.springThicknessMm).toEqual([
      { printed: '0.27', page: '9', note: 'by the gauge table Harrow, from “Harrow, strength 2/0”' },
    ])
    expect(fields.springGauge).toEqual(before.fields.springGauge)
    expect(await page.getByRole('button', { name: 'Use 0.27 mm' }).count()).toBe(0)
    await goTo(page, `#/caliber/${id}`)
    await page.getByText(/by your table Harrow: 0.27 mm/).waitFor()
    await page.keyboard.press('Control+z')
    await expect.poll(async () => (await client('caliber.read', { id })).entry.fields.springThicknessMm).toBeUndefined()
  })

  test('where the stated size differs, by how much is said, and where a print is in doubt, why', async () => {
    const { page, host } = await open()
    const client = createClient(host.dispatch)
    await client('gauge.save', { id: null, table: gaugeTableOf('Harrow', { 12: 0.14, '2/0': 0.27 }) })
    const differs = withGauge('Harrow 2/0', { springThicknessMm: '0.25' })
    const { id } = await client('caliber.save', { caliberId: null, entry: differs })
    await goTo(page, `#/caliber/${id}`)
    await page.getByText('0.02 mm more than the stated thickness of 0.25 mm').waitFor()
    await client('caliber.save', { caliberId: id, entry: withGauge('Harrow 12 × 2/0') })
    await page.reload()
    await page.getByText('12 and 2/0 stand there, and nothing says which is the thickness').waitFor()
    expect(await page.getByText('by your table').count()).toBe(0)
  })

  test('nothing serious is found by axe, and nothing runs out of a narrow page, with the form open or not', async () => {
    const { page, host } = await open({ viewport: { width: 400, height: 800 } })
    const client = createClient(host.dispatch)
    const sizes = Array.from({ length: 26 }, (_, at) => [String(at), 0.3 - at / 100] as const)
    const rows = sizes.map(([number, mm]) => [number, Number(mm.toFixed(2))] as const)
    await client('gauge.save', { id: null, table: gaugeTableOf('Slit gauge of the Harrow counter', rows) })
    await goTo(page, '#/gauges')
    await page.locator('.gauge-sizes').waitFor()
    const fits = () => page.locator('.page').evaluate((element) => element.scrollWidth - element.clientWidth)
    expect(await seriousFindings(page)).toEqual([])
    expect(await fits()).toBe(0)
    await page.locator('.gauge-title').focus()
    await page.keyboard.press('Enter')
    await page.locator('.gauge-form').waitFor()
    expect(await seriousFindings(page)).toEqual([])
    expect(await fits()).toBe(0)
    await page.keyboard.press('Escape')
    await page.locator('.gauge-title').waitFor()
    await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe('gauge-title')
  })
})
