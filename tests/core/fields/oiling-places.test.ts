import { expect, it } from 'vitest'
import { oilingGroups, oilingPlaces } from '../../../core/fields/oiling-places.ts'

it('says of every place where it stands in print, or that it is common practice', () => {
  for (const { label, source } of Object.values(oilingPlaces)) {
    expect(source, label).toMatch(/\d{4}|common practice/)
    expect(label).toMatch(/^[a-z]/)
  }
})

it('gathers in groups only what is oiled', () => {
  for (const { places } of oilingGroups) for (const place of places) expect(oilingPlaces[place].oil).toBe('wanted')
})
