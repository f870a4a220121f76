import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { Caliber } from '../record/caliber.ts'
import type { Reading } from '../record/reading.ts'
import { orderedSpring } from '../wording/ordered-spring.ts'
import type { NewOrderLine } from './order-line.ts'

const specified: readonly CaliberFieldKey[] = [
  'springHeightMm',
  'springThicknessMm',
  'springLengthMm',
  'springEnd',
  'springMaterial',
  'springGauge',
  'barrelInsideMm',
]

/** Where the chosen readings stand: source and page where all have the same, else each source with its page. */
const placeOf = (readings: readonly Reading[], titleOf: (key: string) => string) => {
  const places = new Map<string, { readonly source: string; readonly page: string | undefined }>()
  for (const { source, page } of readings)
    if (source !== undefined) places.set(`${source}\t${page ?? ''}`, { source: titleOf(source), page })
  const [only, ...others] = places.values()
  if (only === undefined) return {}
  if (others.length === 0)
    return { source: only.source.slice(0, 400), ...(only.page === undefined ? {} : { page: only.page.slice(0, 40) }) }
  const all = [only, ...others].map(({ source, page }) => (page === undefined ? source : `${source}, p. ${page}`))
  return { source: all.join('; ').slice(0, 400) }
}

/**
 * A line for the spring that a caliber's sources specify, with the place where they do; null where its height or its
 * thickness is not stated. A gauge number goes along as printed.
 */
export const orderOfSpring = (caliber: Caliber, titleOf: (key: string) => string): NewOrderLine | null => {
  const { values } = caliber
  const { springHeightMm: heightMm, springThicknessMm: thicknessMm, springGauge } = values
  if (heightMm === undefined || thicknessMm === undefined) return null
  const spring = {
    heightMm,
    thicknessMm,
    ...(values.springLengthMm === undefined ? {} : { lengthMm: values.springLengthMm }),
    ...(values.barrelInsideMm === undefined ? {} : { barrelMm: values.barrelInsideMm }),
    ...(values.springEnd === undefined ? {} : { end: values.springEnd }),
    ...(values.springMaterial === undefined ? {} : { material: values.springMaterial }),
  }
  const gauge = springGauge?.slice(0, 200)
  const chosen = specified.flatMap((key) => {
    const readings: readonly Reading[] = caliber.readings[key] ?? []
    return readings.filter((reading) => reading.chosen)
  })
  const notes = [...new Set(chosen.flatMap(({ note }) => (note === undefined || note === '' ? [] : [note])))]
  return {
    kind: 'spring',
    what: orderedSpring(spring, gauge).slice(0, 400),
    spring,
    ...(gauge === undefined ? {} : { gauge }),
    caliber: { maker: values.maker ?? '', designation: values.designation ?? '' },
    ...placeOf(chosen, titleOf),
    ...(notes.length === 0 ? {} : { note: notes.join('; ').slice(0, 1000) }),
  }
}
