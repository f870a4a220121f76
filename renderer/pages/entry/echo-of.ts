import type { FieldDef, MeasuredKind } from '../../../core/fields/field.ts'
import { formatQuantity } from '../../../core/quantities/format-quantity.ts'
import type { PrintedUnit, Quantity } from '../../../core/quantities/quantity.ts'

export const isMeasured = (def: FieldDef): def is Extract<FieldDef, { kind: MeasuredKind }> => 'usual' in def

/** The unit that stands behind a field of each kind; a bare number is taken in it. */
export const unitOf: Readonly<Record<MeasuredKind, string>> = {
  length: 'mm',
  rate: 'vph',
  angle: '°',
  duration: 'h',
  count: '',
  ratio: '',
  year: '',
}

/** How a unit other than the canonical one stands behind a field. */
export const unitWords: Readonly<Partial<Record<PrintedUnit, string>>> = { ligne: 'lig', inch: 'in', douzieme: 'dz' }

const plain = (text: string): string => text.replace(/[\s\u2009\u202f'’]/gu, '').replace(',', '.')

/** What a printed value was read as, where that says more than the print: another unit, or limits. Empty otherwise. */
export const echoOf = (kind: MeasuredKind, printed: string, quantity: Quantity): string => {
  const say = (value: number) => `${formatQuantity(kind, value)}${kind === 'rate' ? ' vph' : ''}`
  const value = say(quantity.value)
  const { low, high } = quantity
  const limits =
    low !== undefined && high !== undefined
      ? `${say(low)} to ${say(high)}`
      : high !== undefined
        ? `at most ${say(high)}`
        : low !== undefined
          ? `at least ${say(low)}`
          : ''
  if (limits !== '') return `${value}, ${limits}`
  const bare = plain(value).replace(/[^\d.]+$/u, '')
  const typed = plain(printed)
  const same = typed !== '' && Number(typed) === Number(bare) && /\d$/.test(typed)
  return same || typed === plain(value) ? '' : value
}
