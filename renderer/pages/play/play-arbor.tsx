import { pivotsUneven } from '../../../core/bench/judge-play.ts'
import { type PlayPlace, playPlaces } from '../../../core/bench/play-places.ts'
import type { PlayMovement } from '../../../core/bench/play-standard.ts'
import { type PlayName, unevenPivotsSentence } from '../../../core/wording/play-sentence.ts'
import { PlayRow } from './play-row.tsx'
import type { PlayRowRead } from './read-play-row.ts'

export const playRowNames: readonly PlayName[] = ['end', 'upper', 'lower']

interface PlayArborProps {
  readonly place: PlayPlace
  readonly movement: PlayMovement
  readonly makers: boolean
  readonly rows: Readonly<Record<PlayName, PlayRowRead>>
  readonly onType: (key: string, text: string) => void
}

/** The plays of one arbor: along it, and across the hole of either pivot. */
export const PlayArbor = ({ place, rows, ...rest }: PlayArborProps) => (
  <section className="play-arbor" aria-labelledby={`play-${place}`}>
    <h3 id={`play-${place}`}>{playPlaces[place].label}</h3>
    <div className="play-rows">
      {playRowNames.map((name) => (
        <PlayRow key={name} place={place} name={name} row={rows[name]} {...rest} />
      ))}
      {pivotsUneven(rows.upper.finding?.verdict, rows.lower.finding?.verdict) && (
        <p className="play-uneven">
          <span aria-hidden="true">△</span> {unevenPivotsSentence}
        </p>
      )}
    </div>
  </section>
)
