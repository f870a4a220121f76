import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import type { StripCompared } from '../../../core/springs/compare-strip.ts'
import type { SpringEnd } from '../../../core/springs/end-compatibility.ts'
import { figure } from '../../../core/wording/figure.ts'
import { endMatchWords, sizeDifference, sizeVerdictWords } from '../../../core/wording/strip-sentence.ts'

interface Line {
  readonly name: string
  readonly specified: string
  readonly found: string
  readonly offBy?: string
  readonly verdict?: string
}

const shown = (value: number | null, decimals: number, unit = ''): string =>
  value === null ? '–' : `${figure(value, decimals)}${unit === '' ? '' : `\u202f${unit}`}`
const endOf = (end: SpringEnd | undefined): string => (end === undefined ? '–' : caliberFields.springEnd.choices[end])

const linesOf = (compared: StripCompared, specifiedEnd: SpringEnd | undefined, end: SpringEnd | undefined): Line[] => {
  const { mark, word } = endMatchWords[compared.end]
  const { specified, found } = compared
  return [
    ...(['height', 'thickness', 'length'] as const).map((name) => {
      const size = compared[name]
      const said = sizeVerdictWords(name, size.verdict)
      return {
        name,
        specified: shown(size.specified, 4, 'mm'),
        found: shown(size.measured, 4, 'mm'),
        offBy: sizeDifference(name, size.difference),
        verdict: `${said.mark} ${said.word}`,
      }
    }),
    {
      name: 'end',
      specified: endOf(specifiedEnd),
      found: endOf(end),
      verdict: end === undefined ? '○ not looked at' : `${mark} ${word}`,
    },
    { name: 'theoretical turns', specified: shown(specified.turns, 2), found: shown(found.turns, 2) },
    { name: 'hours', specified: shown(specified.hours, 1, 'h'), found: shown(found.hours, 1, 'h') },
  ]
}

interface StripTableProps {
  readonly compared: StripCompared
  readonly specifiedEnd: SpringEnd | undefined
  readonly end: SpringEnd | undefined
}

/** The strip in the barrel beside the one specified, size by size, and what each gives. */
export const StripTable = ({ compared, specifiedEnd, end }: StripTableProps) => (
  <table className="strip-sizes">
    <thead>
      <tr>
        <th scope="col">Size</th>
        <th scope="col">Specified</th>
        <th scope="col">Measured</th>
        <th scope="col">Off by</th>
        <th scope="col">Verdict</th>
      </tr>
    </thead>
    <tbody>
      {linesOf(compared, specifiedEnd, end).map(({ name, specified, found, offBy, verdict }) => (
        <tr key={name}>
          <th scope="row">{name}</th>
          <td>{specified}</td>
          <td>{found}</td>
          <td>{offBy}</td>
          <td>{verdict}</td>
        </tr>
      ))}
    </tbody>
  </table>
)
