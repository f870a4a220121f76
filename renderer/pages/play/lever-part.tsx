import type { ToothForm } from '../../../core/bench/lever-freedoms.ts'
import { lockLeftSentence } from '../../../core/wording/freedom-sentence.ts'
import { BenchField } from '../../components/bench-field.tsx'
import { FreedomRow } from './freedom-row.tsx'
import type { PlayTyped } from './play-place.ts'
import type { LeverRead } from './read-lever.ts'

const leftVerdict = { holds: 'within', fails: 'below', 'cannot-tell': 'cannot-tell' } as const

interface LeverPartProps {
  readonly typed: PlayTyped
  readonly lever: LeverRead
  readonly onChange: (next: PlayTyped) => void
}

/** The freedoms of a lever escapement, in degrees: lock, run, drop, and the impulse pin in the fork. */
export const LeverPart = ({ typed, lever, onChange }: LeverPartProps) => (
  <section className="play-part" aria-labelledby="play-lever">
    <h2 id="play-lever">Freedoms of the lever escapement</h2>
    <div className="bench-fields">
      <div className="bench-field">
        <label htmlFor="tooth-form">Teeth of the escape wheel</label>
        <select
          id="tooth-form"
          value={typed.tooth}
          onChange={({ target }) => onChange({ ...typed, tooth: target.value as ToothForm })}
        >
          <option value="club">club teeth</option>
          <option value="ratchet">ratchet teeth, pointed</option>
        </select>
      </div>
      <BenchField
        label="Angles may be off by"
        name="offDeg"
        unit="°"
        figure={lever.off}
        hint="each way; else half of the last digit"
        onType={(offDeg) => onChange({ ...typed, offDeg })}
      />
      <BenchField
        label="Diameter of the escape wheel"
        name="wheelMm"
        unit="mm"
        figure={lever.wheel}
        hint="gives the drop in mm"
        onType={(wheelMm) => onChange({ ...typed, wheelMm })}
      />
      <BenchField
        label="Acting length of the fork"
        name="forkMm"
        unit="mm"
        figure={lever.fork}
        hint="gives the play of the pin in mm"
        onType={(forkMm) => onChange({ ...typed, forkMm })}
      />
    </div>
    <div className="play-rows lever-rows">
      {lever.freedoms.map((read) => (
        <FreedomRow
          key={read.freedom}
          read={read}
          onType={(text) => onChange({ ...typed, freedoms: { ...typed.freedoms, [read.freedom]: text } })}
        />
      ))}
    </div>
    {lever.left && (
      <p className={`lever-left verdict-${leftVerdict[lever.left.verdict]}`} role="status">
        {lockLeftSentence(lever.left)}
      </p>
    )}
  </section>
)
