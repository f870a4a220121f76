import type { ColumnUnit } from '../exchange/column-unit.ts'

const names: Readonly<Record<ColumnUnit, string>> = {
  mm: 'mm',
  ligne: 'lignes',
  douzieme: 'douzièmes',
  inch: 'inches',
  'tenths-mm': '1/10 mm',
  'hundredths-mm': '1/100 mm',
  micrometre: 'µm',
  vph: 'an hour',
  'per-minute': 'a minute',
  'per-second': 'a second',
  hertz: 'Hz',
  hour: 'hours',
  day: 'days',
  degree: 'degrees',
}

/**
 * The name of a unit as it stands over a column.
 *
 * @example
 * unitName('ligne') // 'lignes'
 */
export const unitName = (unit: ColumnUnit): string => names[unit]
