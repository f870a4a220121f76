import { leverFreedoms } from '../../../core/bench/lever-freedoms.ts'
import { figure } from '../../../core/wording/figure.ts'
import { freedomSentence, freedomStandardLine } from '../../../core/wording/freedom-sentence.ts'
import { measuredText } from '../../../core/wording/measured-text.ts'
import { useRest } from '../../components/use-rest.ts'
import { GaugeStrip } from '../../drawings/gauge-strip.tsx'
import { PlayCell } from './play-cell.tsx'
import type { FreedomRead } from './read-lever.ts'
import { ToldVerdict } from './told-verdict.tsx'

const centres = { 'escape-wheel': 'about the escape wheel', 'pallet-staff': 'about the pallet staff' } as const

/** One freedom of the lever escapement, in degrees, beside what the book allows. */
export const FreedomRow = ({ read, onType }: { read: FreedomRead; onType: (text: string) => void }) => {
  const { freedom, figure: typed, limits, finding, arcMm } = read
  const { label, about } = leverFreedoms[freedom]
  const rested = useRest(typed.text, true)
  const wrong = rested && typed.problem !== ''
  return (
    <div className="play-row">
      <p className="play-name">
        {label} <span className="quiet">{centres[about]}</span>
      </p>
      <PlayCell
        column="Degrees"
        label={`${label}, degrees`}
        name={`lever.${freedom}`}
        figure={typed}
        wrong={wrong}
        toldBy={`lever-${freedom}-told`}
        onType={onType}
      />
      <div className="play-gauge">
        <GaugeStrip limits={limits} reading={typed.measured ?? null} unit="°" span={3} step={0.25} />
        <p className="play-standard">{freedomStandardLine(freedom, limits)}</p>
      </div>
      <div className="play-told" id={`lever-${freedom}-told`}>
        {wrong && <p className="problem">{typed.problem}</p>}
        {finding && (
          <ToldVerdict
            verdict={finding.verdict}
            measured={`${measuredText(finding.measured, '°')}${arcMm === undefined ? '' : `, ${figure(arcMm, 3)} mm`}`}
            says={freedomSentence(finding)}
          />
        )}
      </div>
    </div>
  )
}
