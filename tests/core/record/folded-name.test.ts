import { expect, it } from 'vitest'
import { foldHeading } from '../../../core/record/fold-heading.ts'
import { foldedName } from '../../../core/record/folded-name.ts'

it('folds as a heading is folded, however many names came before', () => {
  for (let i = 0; i < 12_000; i += 1) {
    const name = `Größe ${i % 7000}`
    expect(foldedName(name)).toBe(foldHeading(name))
  }
})
