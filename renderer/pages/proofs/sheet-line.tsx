import { Link } from 'wouter'
import type { ProofLine } from '../../../core/api/contract.ts'
import { standingOf } from '../../../core/proofs/standing.ts'
import { figure } from '../../../core/wording/figure.ts'
import { firstSentence } from '../../../core/wording/first-sentence.ts'
import { proofTitle } from '../../../core/wording/proof-title.ts'
import { standingWord } from '../../../core/wording/standing.ts'
import { Working } from '../../components/working.tsx'
import type { Grouping } from './sheet-rows.ts'
import { StandingMark, standingClass } from './standing-mark.tsx'

/** What tells a line from every other: a proof finds one thing of a caliber. */
export const lineKey = ({ caliberId, proof }: ProofLine): string => `${caliberId}-${proof}`

const difference = ({ difference: off, unit }: ProofLine): string =>
  off === null || off === 0 ? '' : `${off > 0 ? '+' : ''}${figure(off, 3)}${unit ? ` ${unit}` : ''}`

/** The step of the working that comes to what was found; the others are on the caliber's page. */
const chiefStep = ({ working, found }: ProofLine): ProofLine['working'][number] | undefined =>
  working.find(({ gives }) => gives === found) ?? working[0]

interface SheetLineProps {
  readonly line: ProofLine
  readonly by: Grouping
  readonly onFocus: () => void
}

/** One finding: of which caliber or by which proof, what it found with its working, and by how much it is off. Opens the caliber at the field. */
export const SheetLine = ({ line, by, onFocus }: SheetLineProps) => {
  const standing = standingOf(line)
  const step = chiefStep(line)
  return (
    <Link
      href={`/caliber/${line.caliberId}${line.field === null ? '' : `/at/${line.field}`}`}
      className="sheet-line"
      data-line={lineKey(line)}
      data-standing={standing}
      onFocus={onFocus}
    >
      <span className={standingClass(standing)}>
        <StandingMark standing={standing} />
        {standingWord(standing)}
      </span>
      <span className="sheet-name">
        {by !== 'caliber' && (
          <span className="sheet-caliber">
            {line.maker} {line.designation}
          </span>
        )}
        {by !== 'proof' && <span className={by === 'caliber' ? '' : 'quiet'}>{proofTitle(line.proof)}</span>}
      </span>
      <span className="sheet-finding">
        <span className="sheet-message">{firstSentence(line.message)}</span>
        {line.overruled !== null && <span className="quiet">{line.overruled}</span>}
        {step && <Working step={step} />}
      </span>
      <span className="sheet-difference">{difference(line)}</span>
    </Link>
  )
}
