import { expect, it } from 'vitest'
import { springColumnFromHeading } from '../../../core/exchange/spring-column.ts'

it.each([
  ['Ref.', 'supplierRef', null],
  ['Artikelnummer', 'supplierRef', null],
  ['Hauteur (1/10)', 'heightMm', 'tenths-mm'],
  ['Width', 'heightMm', null],
  ['Stärke 1/100', 'thicknessMm', 'hundredths-mm'],
  ['Force du ressort (1/100 mm)', 'thicknessMm', 'hundredths-mm'],
  ['Length, inches', 'lengthMm', 'inch'],
  ['Longueur mm', 'lengthMm', 'mm'],
  ['Ø intérieur du barillet', 'barrelMm', null],
  ['Federhaus Ø', 'barrelMm', null],
  ['Maße', 'sizes', null],
  ['Hook', 'end', null],
  ['Voorraad', 'inStock', null],
  ['Prix', 'price', null],
  ['Remarks', 'note', null],
  ['Réf. fourn.', 'supplierRef', null],
  ['Haut. (mm)', 'heightMm', 'mm'],
  ['Ép. 1/100', 'thicknessMm', 'hundredths-mm'],
  ['Épaisseur (centièmes)', 'thicknessMm', 'hundredths-mm'],
  ['Höhe in Zehntel', 'heightMm', 'tenths-mm'],
  ['Long. mm', 'lengthMm', 'mm'],
  ['Ø barillet', 'barrelMm', null],
  ['Accroch.', 'end', null],
  ['Mat.', 'material', null],
  ['Stk.', 'inStock', null],
  ['Prix HT', 'price', null],
  ['Preis (CHF)', 'price', null],
  ['prijs €', 'price', null],
  ['Désignation', 'note', null],
] as const)('knows %s', (heading, kind, unit) => {
  expect(springColumnFromHeading(heading)).toEqual({ heading, kind, unit })
})

it('leaves out a column of which it knows nothing', () => {
  expect(springColumnFromHeading('Shelf').kind).toBeNull()
})
