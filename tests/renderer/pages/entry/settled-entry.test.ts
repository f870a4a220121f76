import { expect, test } from 'vitest'
import { blankEntry } from '../../../../core/record/entry.ts'
import { settledEntry } from '../../../../renderer/pages/entry/settled-entry.ts'

test('what was left empty is not saved', () => {
  const settled = settledEntry({
    ...blankEntry(),
    maker: ' Verrin ',
    fields: { thirdWheel: [{ printed: '', source: 'hb1' }], beatRateVph: [{ printed: '18000' }] },
    jewels: [
      { place: 'balance', kind: 'hole', count: '2' },
      { place: '', kind: '' },
    ],
  })
  expect(settled.maker).toBe('Verrin')
  expect(settled.fields).toEqual({ beatRateVph: [{ printed: '18000' }] })
  expect(settled.jewels).toEqual([{ place: 'balance', kind: 'hole', count: 2 }])
})

test('where the chosen reading was emptied, the one that is left is chosen', () => {
  const { fields } = settledEntry({
    ...blankEntry(),
    fields: {
      springLengthMm: [
        { printed: '480', chosen: false },
        { printed: '500', chosen: false },
        { printed: '', chosen: true },
      ],
    },
  })
  expect(fields.springLengthMm?.map(({ chosen }) => chosen)).toEqual([true, false])
})

test('names in a cell are a list, with commas between them', () => {
  const { stripOrder } = settledEntry({ ...blankEntry(), stripOrder: [{ part: 'balance', after: 'hands, dial' }] })
  expect(stripOrder).toEqual([{ part: 'balance', after: ['hands', 'dial'] }])
})
