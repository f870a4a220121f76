import { formatLength } from '../quantities/format-length.ts'
import type { GaugeBesideStated, GaugeOfCaliber } from '../springs/gauge-reads.ts'
import type { GaugeMeasure } from '../springs/gauge-table.ts'
import type { GaugeDoubt } from '../springs/read-gauge.ts'
import { listed } from './listed.ts'

/** What a gauge measures, as the page and a sentence name it. */
export const gaugeMeasureWords: Readonly<Record<GaugeMeasure, string>> = { thickness: 'thickness', height: 'height' }

const besideSentence = (measures: GaugeMeasure, { stated, differenceMm, agrees }: GaugeBesideStated): string => {
  const size = `the stated ${gaugeMeasureWords[measures]} of ${formatLength(stated, 'mm')}`
  if (agrees) return `agrees with ${size}`
  return `${formatLength(Math.abs(differenceMm), 'mm')} ${differenceMm > 0 ? 'more' : 'less'} than ${size}`
}

/**
 * What a printed gauge number comes to by its owner's table, and how that stands to what is stated.
 * @example
 * gaugeSentence({ table: { name: 'Harrow', measures: 'thickness', rows: [] }, row: { number: '14', mm: 0.12 }, measures: 'thickness', beside: { stated: 0.13, differenceMm: -0.01, agrees: false } }) // 'Thickness no. 14 by your table Harrow: 0.12 mm; 0.01 mm less than the stated thickness of 0.13 mm.'
 */
export const gaugeSentence = ({ table, row, measures, beside }: GaugeOfCaliber): string => {
  const what = measures === 'thickness' ? 'Thickness' : 'Height'
  const compared = beside === null ? '' : `; ${besideSentence(measures, beside)}`
  return `${what} no. ${row.number} by your table ${table.name}: ${formatLength(row.mm, 'mm')}${compared}.`
}

/**
 * Why a printed gauge is not looked up, and where that helps, what would settle it.
 * @example
 * gaugeDoubt({ code: 'no-row', name: 'Harrow', number: '14', measures: 'thickness' }) // 'Your table Harrow has no thickness no. 14.'
 */
export const gaugeDoubt = (doubt: GaugeDoubt): string => {
  switch (doubt.code) {
    case 'none-named':
      return 'It names none of your gauge tables.'
    case 'several-named':
      return `It names more than one of your gauge tables: ${listed(doubt.names)}.`
    case 'other-words':
      return `Beside the name of your table ${doubt.name} it says ${listed(doubt.words.map((word) => `“${word}”`))}, so another gauge or number may be meant.`
    case 'no-number':
      return `It names your table ${doubt.name}, but no number of it.`
    case 'several-numbers':
      return `${listed(doubt.numbers)} stand there, and nothing says which is the ${gaugeMeasureWords[doubt.measures]}. The table ${doubt.name} can say where its number stands.`
    case 'either-measure':
      return `No. ${doubt.number} can be the height or the thickness; both are in your tables of ${doubt.name}.`
    case 'other-measure':
      return `Its number is not one of ${gaugeMeasureWords[doubt.measures]}, which is all that your table ${doubt.name} tells.`
    case 'no-row':
      return `Your table ${doubt.name} has no ${gaugeMeasureWords[doubt.measures]} no. ${doubt.number}.`
  }
}
