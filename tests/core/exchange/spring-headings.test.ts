import { expect, test } from 'vitest'
import { type SpringColumnKind, springColumnKinds, springHeadings } from '../../../core/exchange/spring-headings.ts'
import { foldHeading } from '../../../core/record/fold-heading.ts'

test('every kind of column has headings by which it is known, and no heading stands for two', () => {
  const owner = new Map<string, string>()
  for (const kind of Object.keys(springColumnKinds) as SpringColumnKind[]) {
    expect(springHeadings[kind]?.length ?? 0, kind).toBeGreaterThan(0)
    for (const heading of springHeadings[kind] ?? []) {
      expect(owner.get(foldHeading(heading)) ?? kind, heading).toBe(kind)
      owner.set(foldHeading(heading), kind)
    }
  }
})
