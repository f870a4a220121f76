import { expect, it } from 'vitest'
import { oilingPlaces } from '../../../core/fields/oiling-places.ts'
import { isDry, oilingPlacesOf } from '../../../core/record/oiling-places-of.ts'

it.each([
  ['Mainspring', 'mainspring'],
  ['ressort de barillet', 'mainspring'],
  ['barrel arbor', 'barrelArbor'],
  ['arbre de barillet', 'barrelArbor'],
  ['Federhauswand', 'barrelWall'],
  ['upper and lower centre wheel pivots', 'centrePivots'],
  ['Großbodenrad', 'centrePivots'],
  ['pivots de petite moyenne', 'thirdPivots'],
  ['pivots de seconde', 'fourthPivots'],
  ['centre seconds pivots', 'sweepPivots'],
  ['Ankerrad', 'escapePivots'],
  ['pallet stones and escape teeth', 'palletFaces'],
  ['dents de la roue d’échappement', 'palletFaces'],
  ['pallet pivots', 'palletPivots'],
  ['Ankerzapfen', 'palletPivots'],
  ['fork and impulse pin', 'forkAndPin'],
  ['balance cap jewels', 'balancePivots'],
  ['contre-pivots', 'balancePivots'],
  ['balance spring', 'hairspring'],
  ['balansveer', 'hairspring'],
  ['chaussée', 'motionWork'],
  ['Wechselrad', 'motionWork'],
  ['opwindas', 'keylessWork'],
  ['third wheel teeth', 'trainTeeth'],
])('%s is one place: %s', (text, place) => {
  expect(oilingPlacesOf(text)).toEqual([place])
})

it('finds several places in one line, and groups', () => {
  expect(oilingPlacesOf('third, fourth & escape pivots')).toEqual(['thirdPivots', 'fourthPivots', 'escapePivots'])
  expect(oilingPlacesOf('train pivots')).toContain('centrePivots')
  expect(oilingPlacesOf('escapement')).toEqual(['escapePivots', 'palletFaces'])
})

it('does not guess at what it does not know', () => {
  for (const text of ['rotor axle', 'control lever', 'thingummy', '']) expect(oilingPlacesOf(text)).toEqual([])
})

it('finds every place by its own label', () => {
  for (const [place, { label }] of Object.entries(oilingPlaces)) expect(oilingPlacesOf(label), label).toContain(place)
})

it('remembers without mixing up, however many texts came before', () => {
  for (let i = 0; i < 12_000; i += 1) oilingPlacesOf(`place ${i}`)
  expect(oilingPlacesOf('balance spring')).toEqual(['hairspring'])
})

it.each([
  'dry',
  'Dry.',
  'left dry',
  'no oil',
  'none',
  '—',
  'à sec',
  'sans huile',
  'trocken',
  'nicht ölen',
  'droog',
  'geen olie',
  'dry, wiped clean',
])('“%s” is dry', (lubricant) => {
  expect(isDry(lubricant)).toBe(true)
})

it.each(['thin oil', 'dry graphite', 'grease', 'oil no. 3', 'olie'])('“%s” is not', (lubricant) => {
  expect(isDry(lubricant)).toBe(false)
})
