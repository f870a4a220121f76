import { type PlayPlace, playPlaces } from '../../../core/bench/play-places.ts'
import type { PlayMovement } from '../../../core/bench/play-standard.ts'
import { figure } from '../../../core/wording/figure.ts'
import { measuredText } from '../../../core/wording/measured-text.ts'
import { type PlayName, playNames, playSentence, playStandardLine } from '../../../core/wording/play-sentence.ts'
import { useRest } from '../../components/use-rest.ts'
import { GaugeStrip } from '../../drawings/gauge-strip.tsx'
import { PlayCell } from './play-cell.tsx'
import { cellKey, cellLabels, type PlayCellName, type PlayRowRead } from './read-play-row.ts'
import { ToldVerdict } from './told-verdict.tsx'

/** What a strip shows at its right end: all end-shakes and all side-shakes of a kind of movement are drawn to one scale. */
export const scaleOf = (movement: PlayMovement, name: PlayName): { readonly span: number; readonly step: number } =>
  movement === 'clock'
    ? { span: 0.2, step: 0.02 }
    : name === 'end'
      ? { span: 0.1, step: 0.01 }
      : { span: 0.04, step: 0.005 }

const shortNames: Readonly<Record<PlayName, string>> = { end: 'End-shake', upper: 'Upper pivot', lower: 'Lower pivot' }

interface PlayRowProps {
  readonly place: PlayPlace
  readonly name: PlayName
  readonly movement: PlayMovement
  readonly makers: boolean
  readonly row: PlayRowRead
  readonly onType: (key: string, text: string) => void
}

/** One play of an arbor: what was measured, drawn beside what is in print, and what it comes to. */
export const PlayRow = ({ place, name, movement, makers, row, onType }: PlayRowProps) => {
  const { finding, standard, measured, refused, wanted } = row
  const id = `${place}-${name}`
  const label = `${playPlaces[place].label}, ${playNames[name].toLowerCase()}`
  const bySizes = row.hole.measured !== undefined && row.pivot.measured !== undefined
  const cells = [row.hole, row.pivot, row.play, row.maker]
  // Typing may rest in any cell of the row before it is called unreadable.
  const rested = useRest(cells.map(({ text }) => text).join('\n'), true)
  const problem = rested ? cells.map((one) => one.problem).find((one) => one !== '') : undefined
  const cell = (which: PlayCellName, column?: string) => {
    const reckoned = which === 'play' && bySizes
    return (
      <PlayCell
        {...(column !== undefined && { column })}
        label={which === 'play' ? label : `${label}: ${cellLabels[which].toLowerCase()}`}
        name={cellKey(place, name, which)}
        figure={row[which]}
        wrong={rested && row[which].problem !== ''}
        reckoned={reckoned ? (measured === undefined ? '' : figure(measured.value, 4)) : undefined}
        toldBy={`${id}-told`}
        onType={(text) => onType(cellKey(place, name, which), text)}
      />
    )
  }
  const limits = 'limits' in standard ? standard.limits : null
  return (
    <div className="play-row" data-verdict={finding?.verdict}>
      <p className="play-name">{shortNames[name]}</p>
      {name === 'end' ? (
        <div className="play-none" />
      ) : (
        <>
          {cell('hole', 'Hole')}
          {cell('pivot', 'Pivot')}
        </>
      )}
      {name === 'end' ? cell('play') : cell('play', 'Side-shake')}
      {makers && cell('maker', 'Maker’s figure')}
      <div className="play-gauge">
        {(limits !== null || measured !== undefined) && (
          <GaugeStrip limits={limits} reading={measured ?? null} unit="mm" {...scaleOf(movement, name)} />
        )}
        <p className="play-standard">{playStandardLine(standard)}</p>
      </div>
      <div className="play-told" id={`${id}-told`}>
        {problem !== undefined ? (
          <p className="problem">{problem}</p>
        ) : refused !== '' ? (
          <p className="problem">{refused}</p>
        ) : finding !== undefined ? (
          <ToldVerdict
            verdict={finding.verdict}
            measured={measuredText(finding.measured, 'mm')}
            says={playSentence(finding)}
          />
        ) : (
          wanted !== '' && <p className="quiet">{wanted}</p>
        )}
      </div>
    </div>
  )
}
