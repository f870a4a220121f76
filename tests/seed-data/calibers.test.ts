import { describe, expect, it } from 'vitest'
import { type CaliberFieldKey, caliberFields } from '../../core/fields/caliber-fields.ts'
import type { FieldDef } from '../../core/fields/field.ts'
import { readQuantity } from '../../core/quantities/read-quantity.ts'
import { demoCalibers, demoSources, plantedMisprints, printedReadings } from './demo-library.ts'

const isFieldKey = (key: string): key is CaliberFieldKey => Object.hasOwn(caliberFields, key)
const printedAnywhere = (key: CaliberFieldKey) =>
  new Set(demoCalibers.map(({ caliber }) => printedReadings(caliber, key)[0]?.printed))
const states = (key: CaliberFieldKey) => demoCalibers.filter(({ caliber }) => caliber.fields[key] !== undefined)
const kebab = (name: string): string =>
  name
    .replaceAll('½', '-5')
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '')

const ratesInVph = new Set(
  demoCalibers.flatMap(({ caliber }) =>
    printedReadings(caliber, 'beatRateVph').flatMap(({ printed }) => {
      const read = readQuantity('rate', printed)
      return read.ok ? [read.quantity.value] : []
    }),
  ),
)

describe('the demo library', () => {
  it('holds at least 27 calibers by at least six makers, each once', () => {
    const names = demoCalibers.map(({ caliber }) => `${caliber.maker} ${caliber.designation}`)
    expect(names.length).toBeGreaterThanOrEqual(27)
    expect(new Set(names).size).toBe(names.length)
    expect(new Set(demoCalibers.map(({ caliber }) => caliber.maker)).size).toBeGreaterThanOrEqual(6)
  })

  it('keeps each caliber in a file named for maker and designation', () => {
    for (const { file, caliber } of demoCalibers) {
      expect(file).toBe(`${kebab(`${caliber.maker} ${caliber.designation}`)}.json`)
    }
  })

  it('uses only fields of the table and sources on the shelf', () => {
    const shelf = new Set(demoSources.map(({ key }) => key))
    for (const { file, caliber } of demoCalibers) {
      for (const key of Object.keys(caliber.fields)) {
        expect(isFieldKey(key), `${file}: ${key}`).toBe(true)
        for (const { source } of printedReadings(caliber, key)) {
          if (source !== undefined) expect(shelf.has(source), `${file}: ${key}: ${source}`).toBe(true)
        }
      }
    }
  })

  it('has a source for nearly every value, and one chosen reading where there are several', () => {
    let withSource = 0
    let all = 0
    for (const { file, caliber } of demoCalibers) {
      for (const key of Object.keys(caliber.fields)) {
        const readings = printedReadings(caliber, key)
        all += readings.length
        withSource += readings.filter(({ source }) => source !== undefined).length
        if (readings.length > 1)
          expect(readings.filter(({ chosen }) => chosen === true).length, `${file}: ${key}`).toBe(1)
      }
    }
    expect(withSource / all).toBeGreaterThan(0.95)
  })

  it('prints every measured value so that it can be read', () => {
    for (const { file, caliber } of demoCalibers) {
      for (const key of Object.keys(caliber.fields)) {
        if (!isFieldKey(key)) continue
        const def: FieldDef = caliberFields[key]
        if (!('possible' in def)) continue
        for (const { printed } of printedReadings(caliber, key)) {
          const read = readQuantity(def.kind, printed, def.possible)
          expect(read, `${file}: ${key}: ${printed}`).toMatchObject({ ok: true })
        }
      }
    }
  })

  it('spans the rates from 14 400 to 36 000', () => {
    for (const rate of [14400, 16200, 18000, 19800, 21600, 28800, 36000]) expect(ratesInVph).toContain(rate)
  })

  it('spans displays, escapements, shapes, winding and dials', () => {
    for (const display of ['none', 'small seconds', 'centre, direct', 'centre, indirect']) {
      expect(printedAnywhere('secondsDisplay')).toContain(display)
    }
    for (const escapement of ['lever', 'pin lever', 'cylinder', 'detent']) {
      expect(printedAnywhere('escapement')).toContain(escapement)
    }
    for (const shape of ['round', 'oval', 'tonneau', 'rectangular', 'baguette']) {
      expect(printedAnywhere('shape')).toContain(shape)
    }
    for (const winding of ['key', 'stem', 'self-winding']) expect(printedAnywhere('winding')).toContain(winding)
    expect(printedAnywhere('dialHours')).toContain('24')
  })

  it('spans long-going and five-wheel trains, stop work, bridles, gauges, variants and aliases', () => {
    const wanted: readonly CaliberFieldKey[] = [
      'intermediateWheel',
      'fifthWheel',
      'sweepDriver',
      'hoursPerCentreTurn',
      'stopWorkTurns',
      'bridleThicknessMm',
      'springGauge',
      'basedOn',
      'alsoKnownAs',
    ]
    for (const key of wanted) expect(states(key).length, key).toBeGreaterThan(0)
  })

  it('takes no year from a source that was printed before it', () => {
    const printedIn = new Map(
      demoSources.map(({ key, year, edition }) => [key, Number(edition?.match(/\d{4}/)?.[0] ?? year)]),
    )
    for (const { file, caliber } of demoCalibers) {
      for (const { printed, source } of [
        ...printedReadings(caliber, 'firstYear'),
        ...printedReadings(caliber, 'lastYear'),
      ]) {
        const read = readQuantity('year', printed)
        const known = source === undefined ? undefined : printedIn.get(source)
        expect(read.ok && known !== undefined && read.quantity.value <= known, `${file}: ${printed}`).toBe(true)
      }
    }
  })

  it('names a base caliber that is in the library', () => {
    for (const { caliber } of states('basedOn')) {
      const base = printedReadings(caliber, 'basedOn')[0]?.printed
      expect(
        demoCalibers.some((other) => other.caliber.maker === caliber.maker && other.caliber.designation === base),
      ).toBe(true)
    }
  })

  it('prints each planted misprint as its chosen value', () => {
    expect(plantedMisprints.length).toBe(3)
    for (const { caliber: name, field, printed } of plantedMisprints) {
      const found = demoCalibers.find(({ caliber }) => `${caliber.maker} ${caliber.designation}` === name)
      expect(found && printedReadings(found.caliber, field)[0]?.printed, name).toBe(printed)
    }
  })
})
