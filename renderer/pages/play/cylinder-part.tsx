import { cylinderPivot } from '../../../core/formulas/cylinder-pivot.ts'
import { cylinderPivotSentence } from '../../../core/wording/play-sentence.ts'
import { BenchField } from '../../components/bench-field.tsx'
import { typedMeasured } from './typed-measured.ts'

/** What size the pivots of a cylinder should have, from its body. */
export const CylinderPart = ({ text, onType }: { text: string; onType: (text: string) => void }) => {
  const body = typedMeasured({ label: 'Body of the cylinder', kind: 'length', possible: [0.2, 12] }, text, 0)
  return (
    <section className="play-part" aria-labelledby="play-cylinder">
      <h2 id="play-cylinder">Cylinder</h2>
      <div className="bench-fields">
        <BenchField
          label="Body of the cylinder"
          name="cylinderMm"
          unit="mm"
          figure={body}
          hint="measured over the shell"
          onType={onType}
        />
      </div>
      {body.value !== undefined && <p role="status">{cylinderPivotSentence(cylinderPivot(body.value))}</p>}
    </section>
  )
}
