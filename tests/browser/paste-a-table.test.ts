import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'
import { keyboardOf, tabTo } from './support/keyboard.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

/** A made-up handbook's table: forty rows, French headings, sizes in lignes and thicknesses in hundredths. */
const headings = ['Calibre', 'Diamètre (lignes)', 'Hauteur (mm)', 'Alternances', 'Grande moyenne', 'Force (1/100)']
const rows = Array.from({ length: 40 }, (_, index) => [
  `14-${100 + index}`,
  index % 3 === 0 ? '17' : index % 3 === 1 ? '8 3/4' : '12½',
  '4,2',
  '18 000',
  '80',
  '18',
])
/** Five cells that no one can read: row, column, what stands there, and what is said of it. */
const bad = [
  [3, 1, 'env. dix', 'Diameter: "env. dix" cannot be read'],
  [9, 2, '420', 'Height: "420" comes to 420, outside what is possible'],
  [17, 4, '80,5', 'Centre wheel: "80,5" is not a whole number'],
  [28, 1, '6/0', "Diameter: \"6/0'''\" is a size or gauge number"],
  [39, 3, 'lent', 'Beat rate: "lent" cannot be read'],
] as const
const table = [
  headings,
  ...rows.map((row, index) => row.map((cell, at) => bad.find(([r, c]) => r === index && c === at)?.[2] ?? cell)),
]
  .map((row) => row.join('\t'))
  .join('\n')

const permissions = ['clipboard-read', 'clipboard-write']
const copy = (page: Page, text: string) => page.evaluate((copied) => navigator.clipboard.writeText(copied), text)

/** Opens the page, states page and maker, and goes on into the grid, all by keys. */
const toTheGrid = async (
  page: Page,
  keys: { press: (key: string) => Promise<void>; type: (text: string) => Promise<void> },
) => {
  await page.locator('#main h1').waitFor()
  await keys.press('t')
  await page.locator('#table-source:focus').waitFor()
  await keys.press('Enter')
  await keys.type('44')
  await keys.press('Enter')
  await keys.type('Verrin')
  await keys.press('Enter')
  await page.locator('#table-grid:focus').waitFor()
}
const cell = (page: Page, row: number, column: number) => page.locator(`#table-${row}-${column}`)
const count = (page: Page, calibers: number) =>
  page.locator('.status-line', { hasText: `${calibers} calibers` }).waitFor()

inChromium('a table of a handbook', ({ open }) => {
  test('forty rows in French headings and lignes go in but for five bad cells, and one undo takes them all back', async () => {
    const { page } = await open({ permissions })
    const keys = await keyboardOf(page)
    await copy(page, table)
    await toTheGrid(page, keys)
    await keys.press('Control+v')
    await page.getByText('40 calibers, 5 cells are refused').waitFor()
    expect(await cell(page, 0, 1).textContent()).toBe('1738.35 mm')
    expect(await cell(page, 0, 5).textContent()).toBe('180.18 mm')
    expect(await cell(page, 3, 1).getAttribute('aria-invalid')).toBe('true')
    expect(await seriousFindings(page)).toEqual([])
    await page.emulateMedia({ colorScheme: 'dark' })
    await page.locator('[data-theme=night]').waitFor()
    expect(await seriousFindings(page, ['color-contrast'])).toEqual([])

    // Reloaded: what was pasted is still there, and nothing was stored.
    await page.reload()
    await page.getByText('40 calibers, 5 cells are refused').waitFor()
    await count(page, 0)

    await keys.press('F8')
    await page.locator('.table-foot', { hasText: 'Row 4. Diameter: "env. dix" cannot be read' }).waitFor()

    await keys.press('Control+s')
    await page.getByRole('heading', { name: 'Before it is stored' }).waitFor()
    const refused = await page.locator('.table-refusals li').allTextContents()
    expect(refused.length).toBe(5)
    for (const [index, [row, , , reason]] of bad.entries()) {
      expect(refused[index]).toContain(`Row ${row + 1}, 14-${100 + row}`)
      expect(refused[index]).toContain(reason)
    }
    await tabTo(page, '.table-review .chief')
    await keys.press('Enter')
    await page.getByRole('heading', { name: '40 calibers are stored' }).waitFor()
    await count(page, 40)
    expect(await page.locator('.table-refusals li').count()).toBe(5)

    await keys.press('Control+z')
    await page.locator('.status-line', { hasText: 'Taken back: paste of 40 calibers' }).waitFor()
    await count(page, 0)
    expect(await keys.mouse()).toBeNull()
  })

  test('a table is typed by the keys of a grid: down, right, changed, emptied, taken back', async () => {
    const { page } = await open()
    const keys = await keyboardOf(page)
    await toTheGrid(page, keys)
    await keys.type('17-1')
    await keys.press('Tab')
    await keys.type('17')
    await keys.press('Enter')
    expect(await cell(page, 0, 1).textContent()).toBe('17')
    await keys.press('ArrowUp')
    await keys.press('F2')
    await keys.type("'''")
    await keys.press('Enter')
    expect(await cell(page, 0, 1).textContent()).toBe("17'''38.35 mm")
    await keys.press('Home')
    await keys.type('17-2')
    await keys.press('Escape')
    expect(await cell(page, 1, 0).textContent()).toBe('')
    await keys.type('17-2')
    await keys.press('Enter')
    await keys.press('ArrowUp')
    await keys.press('Delete')
    expect(await cell(page, 1, 0).textContent()).toBe('')
    await keys.press('Control+z')
    expect(await cell(page, 1, 0).textContent()).toBe('17-2')
    await keys.press('Control+s')
    await tabTo(page, '.table-review .chief')
    await keys.press('Enter')
    await page.getByRole('heading', { name: '2 calibers are stored' }).waitFor()
    await page.keyboard.press('g')
    await page.locator('#caliber-1').waitFor()
    expect(await page.locator('#caliber-0').textContent()).toContain('17-1')
  })

  test('a name that stands already is skipped, updated or kept beside, as one says', async () => {
    const { page } = await open({ permissions })
    const keys = await keyboardOf(page)
    await copy(page, 'Kaliber;Höhe (mm)\n1;4,2\n2;4,2\n3;4,2')
    await toTheGrid(page, keys)
    await keys.press('Control+v')
    await keys.press('Control+s')
    await tabTo(page, '.table-review .chief')
    await keys.press('Enter')
    await page.getByRole('heading', { name: '3 calibers are stored' }).waitFor()

    await tabTo(page, '.table-stored button')
    await keys.press('Enter')
    await page.locator('#table-source:focus').waitFor()
    await copy(page, 'Kaliber;Höhe (mm)\n1;5,1\n2;5,1\n3;5,1\n4;5,1')
    await tabTo(page, '#table-grid')
    await keys.press('Control+v')
    await keys.press('Control+s')
    await page.getByText('3 rows have names that the library').waitFor()
    expect(await seriousFindings(page)).toEqual([])
    await tabTo(page, 'input[name=table-duplicate-1]')
    await keys.press('ArrowDown')
    await tabTo(page, 'input[name=table-duplicate-2]')
    await keys.press('ArrowUp')
    await tabTo(page, '.table-review .chief:not(:disabled)')
    await keys.press('Enter')
    await page.getByRole('alert').getByText('Row 3: Verrin 3 is taken already').waitFor()
    await page.getByLabel('Designation under which row 3').focus()
    await keys.press('End')
    await keys.type('B')
    await tabTo(page, '.table-review .chief')
    await keys.press('Enter')
    await page.getByRole('heading', { name: '3 calibers are stored' }).waitFor()
    await count(page, 5)
    await keys.press('g')
    const heightOf = async (name: string) => {
      await page.getByRole('option').filter({ hasText: name }).first().waitFor()
      await page
        .getByRole('option')
        .filter({ has: page.getByText(name, { exact: true }) })
        .first()
        .click()
      await page.getByRole('heading', { name: `Verrin ${name}`, exact: true }).waitFor()
      const text = await page.locator('.value-cell', { hasText: 'Height' }).first().textContent()
      await page.keyboard.press('Escape')
      return text
    }
    expect(await heightOf('1')).toMatch(/4[.,]2/)
    expect(await heightOf('2')).toMatch(/5[.,]1/)
    expect(await heightOf('3 B')).toMatch(/5[.,]1/)
  })

  test('a thousand rows are read at once and stay usable', async () => {
    const { page } = await open({ permissions })
    const keys = await keyboardOf(page)
    const many = Array.from({ length: 1000 }, (_, index) => `9-${index},17,"4,2",18000`)
    await copy(page, ['Caliber,Diameter (lignes),Height,vph', ...many].join('\n'))
    await toTheGrid(page, keys)
    const from = Date.now()
    await keys.press('Control+v')
    await page.getByText('1000 calibers').first().waitFor()
    await keys.press('Control+End')
    await cell(page, 1000, 3).waitFor()
    await keys.press('ArrowUp')
    await keys.type('21600')
    await keys.press('Enter')
    await cell(page, 999, 3).getByText('21600').waitFor()
    console.log(`a table of 1000 rows: pasted, gone through and changed in ${Date.now() - from} ms`)
    expect(await page.locator('.table-line').count()).toBeLessThan(60)

    const storedFrom = Date.now()
    await keys.press('Control+s')
    await tabTo(page, '.table-review .chief')
    await keys.press('Enter')
    await page.getByRole('heading', { name: '1000 calibers are stored' }).waitFor()
    console.log(`a table of 1000 rows: looked over and stored in ${Date.now() - storedFrom} ms`)
  })

  test('the unit of the source counts for bare sizes, and its columns are kept for the next table', async () => {
    const { page } = await open({ permissions })
    await page.evaluate(async () => {
      const token = sessionStorage.getItem('lignebook.token') ?? ''
      await fetch('/api/source.save', {
        method: 'POST',
        headers: { 'content-type': 'application/json', authorization: `Bearer ${token}` },
        body: JSON.stringify({ source: { key: 'marlow', title: 'Sizes', unitsAsPrinted: 'ligne' } }),
      })
    })
    const keys = await keyboardOf(page)
    await keys.press('t')
    await page.locator('#table-source:focus').waitFor()
    // A source can be typed for once the shelf has been read.
    await page.locator('#table-source option[value="marlow"]').waitFor({ state: 'attached' })
    await keys.type('mar')
    await copy(page, 'Caliber\tDiameter\tVariety\tHeight\n9-2\t8¾\tB3\t4.2')
    await tabTo(page, '#table-grid')
    await keys.press('Control+v')
    expect(await cell(page, 0, 1).textContent()).toBe('8¾19.74 mm')
    expect(await cell(page, 0, 3).textContent()).toBe('4.2')
    // The column that no field answers to is given one by hand, and moved to the front of its neighbour.
    await page.getByLabel('Field of column 3, headed Variety').selectOption({ label: 'Notes' })
    await page.getByLabel('Field of column 3, headed Variety').press('Alt+ArrowLeft')
    expect(await cell(page, 0, 1).textContent()).toBe('B3')
    await page.getByRole('button', { name: 'Keep these columns for marlow' }).press('Enter')
    await page.getByText('A table under marlow begins with these columns from now on.').waitFor()
    await page.getByRole('button', { name: 'Empty the table' }).press('Enter')
    await page.locator('#table-source').selectOption('')
    await page.locator('#table-source').selectOption('marlow')
    const fields = page.locator('.table-head select[aria-label^="Field"]')
    expect(await fields.evaluateAll((all) => all.map((one) => (one as HTMLSelectElement).value))).toEqual([
      'designation',
      'notes',
      'diameterMm',
      'heightMm',
    ])
  })
})
