import { readFile } from 'node:fs/promises'
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

const french = `Réf.;Haut. (mm);Ép. 1/100;Long. mm;Ø barillet;Accroch.;Mat.;Qté;Prix HT
10a;1,50;10,5;360;10,5;trou;acier bleui;12 pces;4,50
2b;1,45;10;380;10,5;crochet;acier;3;4,20
11;1,50;11;340;10,5;bride glissante;inox;-;6,80
9;1,70;14;300;11,2;X7;acier;1;5,10
`

inChromium('springs', ({ open }) => {
  test('a French list is read in its words, an unknown one is given its meaning, and its numbers stand as a person counts', async () => {
    const { page } = await open()
    await page.evaluate(() => {
      location.hash = '#/springs/import'
    })
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'Sarelle.csv', mimeType: 'text/csv', buffer: Buffer.from(french) })
    await page.getByText('3 added').waitFor()
    await page.getByText('Spring end: "X7" is not a word that Lignebook knows').waitFor()
    const unknown = page.getByRole('region', { name: 'Words of the list' }).locator('[data-unknown] select')
    await unknown.focus()
    // A word of the trade in another language is taken, where the browser by itself would jump to `loop`.
    await page.keyboard.type('Loch')
    await page.getByText('4 added').waitFor()
    expect(await page.locator('.word-meanings select:focus').inputValue()).toBe('hole')
    expect(await seriousFindings(page)).toEqual([])
    await page.keyboard.press('Control+Enter')
    await page.locator('.spring-row').nth(3).waitFor()
    const column = (part: string) => page.locator(`.spring-row [data-part=${part}]`).allInnerTexts()
    expect(await column('supplierRef')).toEqual(['2b', '9', '10a', '11'])
    expect(await column('end')).toEqual(['tongue', 'hole', 'hole', 'slipping bridle'])
    expect(await column('material')).toEqual(['carbon steel', 'carbon steel', 'carbon steel', 'stainless'])
    expect(await page.getByLabel('Tray or list').inputValue()).toBe('on Sarelle')

    const saved = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save as CSV' }).click()
    const lines = (await readFile(await (await saved).path(), 'utf8')).split('\r\n')
    expect(lines[0]).toContain('Tray,Number,Height (mm),Thickness (mm)')
    expect(lines[1]).toBe('Sarelle,2b,1.45,0.1,380,10.5,tongue,carbon steel,3,"4,20",')

    // On paper stand all that were found, not only those in sight.
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
    expect(await page.locator('.printed-springs tbody tr').count()).toBe(4)
    await page.evaluate(() => dispatchEvent(new Event('afterprint')))
    await page.locator('.spring-row').first().waitFor()
  })

  test('another choice among the substitutes, and leaving them, leaves the page whole', async () => {
    const { page } = await open({ demo: true })
    await page.evaluate(() => {
      location.hash = '#/caliber/1/spring'
    })
    await page.locator('.tray-line').first().waitFor()
    await page.getByLabel('In stock only').check()
    await page.getByLabel('In stock only').uncheck()
    await page.evaluate(() => {
      location.hash = '#/springs'
    })
    await page.locator('.spring-row').first().waitFor()
  })

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
