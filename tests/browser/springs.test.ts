import { expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

const messy = `\ufeffOzanne & fils, springs;;;;;;
Winter list;;;;;;
;;;;;;
Bestell-Nr.;Höhe;Stärke (1/100);Länge;Bestand;Preis;Bemerkung
OZ 1;1,50;10,5;360;4;12,50 €;for the drawer
OZ 2;1,20;9;300;0;9,00 €;
;;;;;;
Bestell-Nr.;Höhe;Stärke (1/100);Länge;Bestand;Preis;Bemerkung
OZ 3;zwei;9;300;1;9,00 €;
OZ 4;0,90;7;220;2;"8,50 €";"thin; brittle"
`

inChromium('springs', ({ open }) => {
  test('a messy list is brought in, a spring found and booked out, and all of it taken back', async () => {
    const { page } = await open()
    await page.evaluate(() => {
      location.hash = '#/springs'
    })
    await page.getByText('No spring is in the library yet.').waitFor()
    await page.locator('.notice').getByRole('link', { name: 'Bring in a list' }).click()
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'Ozanne.csv', mimeType: 'text/csv', buffer: Buffer.from(messy) })
    await page.getByText('3 added').waitFor()
    expect(await page.getByLabel('Rows of headings').inputValue()).toBe('4')
    expect(await page.getByLabel('Unit of column 3').inputValue()).toBe('hundredths-mm')
    await page.getByText('Row 9').waitFor()
    expect(await page.locator('.refused-rows li').count()).toBe(1)
    expect(await seriousFindings(page)).toEqual([])
    await page.getByRole('button', { name: 'Bring in' }).click()
    await page.locator('.spring-row').nth(2).waitFor()

    await page.keyboard.press('/')
    await page.keyboard.type('1.5x0,1')
    await page.getByText('1 of 3 springs found').waitFor()
    await page.keyboard.press('ArrowDown')
    await page.locator('.spring-row:focus', { hasText: 'OZ 1' }).waitFor()
    await page.keyboard.press('b')
    await page.getByLabel('How many').fill('5')
    await page.keyboard.press('Enter')
    await page.getByText('5 of spring OZ 1 cannot be booked out: 4 are in stock.').waitFor()
    await page.getByLabel('How many').fill('1')
    await page.getByLabel('For what').fill('Verrin 17-220')
    await page.keyboard.press('Enter')
    await page.locator('.spring-row:focus [data-part="inStock"]', { hasText: '3' }).waitFor()
    await page.keyboard.press('Control+z')
    await page.locator('.spring-row [data-part="inStock"]', { hasText: '4' }).waitFor()
    await page.keyboard.press('Control+z')
    await page.getByText('No spring is in the library yet.').waitFor()
  })

  test('a spring is entered by hand as printed, changed and removed with the keys, and stands narrow and large', async () => {
    const { page } = await open({ viewport: { width: 400, height: 800 } })
    await page.evaluate(() => {
      location.hash = '#/springs'
    })
    await page.getByText('No spring is in the library yet.').waitFor()
    await page.keyboard.press('a')
    await page.getByLabel('Supplier’s number').fill('D 1')
    await page.locator('[name=heightMm]').fill('15/10')
    await page.locator('[name=thicknessMm]').fill('thin')
    await page.keyboard.press('Control+s')
    await page.getByRole('alert').getByText('Spring thickness').waitFor()
    await page.locator('[name=thicknessMm]').fill('.105')
    await page.getByText('= 1.5 mm').waitFor()
    await page.locator('[name=inStock]').fill('2')
    await page.keyboard.press('Control+s')
    await page.locator('.spring-row:focus', { hasText: 'D 1' }).waitFor()
    await page.keyboard.press('Enter')
    await page.getByRole('region', { name: 'Spring D 1' }).waitFor()
    for (const size of [1, 2]) {
      await page.evaluate((share) => localStorage.setItem('lignebook.text-size', String(share)), size)
      await page.reload()
      await page.locator('.spring-row:focus').waitFor()
      await page.keyboard.press('e')
      await page.getByRole('form', { name: 'Change D 1' }).waitFor()
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
      expect(
        await page.evaluate(() => {
          const main = document.getElementById('main')
          return main === null ? 0 : main.scrollWidth - main.clientWidth
        }),
      ).toBeLessThanOrEqual(1)
      expect(await seriousFindings(page)).toEqual([])
      await page.keyboard.press('Escape')
    }
    await page.locator('.spring-row:focus').waitFor()
    await page.keyboard.press('Delete')
    await page.getByText('No spring is in the library yet.').waitFor()
    await page.keyboard.press('Control+z')
    await page.locator('.spring-row', { hasText: 'D 1' }).waitFor()
  })
})
