import { useState } from 'react'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import type { Caliber } from '../../../core/record/caliber.ts'
import { withGaugeSize } from '../../../core/record/with-gauge-size.ts'
import type { GaugeOfCaliber } from '../../../core/springs/gauge-reads.ts'
import { wordFailure } from '../../../core/wording/failure.ts'
import { gaugeMeasureWords } from '../../../core/wording/gauge-sentence.ts'
import { call, useChange } from '../../api/hooks.ts'
import { failureText } from '../../components/failure-text.ts'
import { GaugeLine } from '../../components/gauge-line.tsx'
import { say } from '../../components/say.ts'
import { draftMirror } from '../entry/draft-mirror.ts'

interface SpringGaugeProps {
  readonly id: number
  readonly entry: CaliberEntry
  readonly name: string
  /** The caliber over its bases. */
  readonly caliber: Caliber
}

/** The gauge of a caliber's spring, whose size by a table can be taken over where none is stated: by hand, with the place of the table. */
export const SpringGauge = ({ id, entry, name, caliber }: SpringGaugeProps) => {
  const saving = useChange('caliber.save')
  const [problem, setProblem] = useState('')
  const take = async (read: GaugeOfCaliber, printed: string) => {
    setProblem('')
    try {
      const { draft } = await call('draft.read', { caliberId: id })
      // The draft would be let go by the saving, or would undo it unseen when it is saved itself.
      if (draft !== null || draftMirror.read(id) !== null) {
        setProblem(wordFailure({ code: 'draft-not-saved', details: { name } }))
        return
      }
      await saving.mutateAsync({ caliberId: id, entry: withGaugeSize(entry, read, printed) })
      say(`Taken over: ${gaugeMeasureWords[read.measures]} ${read.row.mm} mm. Ctrl Z takes it back.`)
    } catch (error) {
      setProblem(failureText(error))
    }
  }
  return (
    <>
      <GaugeLine
        caliber={caliber}
        action={(read, printed) =>
          read.beside === null && (
            <button
              type="button"
              className="plain-button head-actions"
              disabled={saving.isPending}
              onClick={() => void take(read, printed)}
            >
              Use {Number(read.row.mm.toFixed(5))} mm
            </button>
          )
        }
      />
      {problem && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
    </>
  )
}
