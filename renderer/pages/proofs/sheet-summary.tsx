import { figure } from '../../../core/wording/figure.ts'
import { OutcomeMark } from '../../components/outcome-mark.tsx'
import type { SheetRun } from './sheet-run.ts'

const calibers = (count: number): string => `${figure(count)} ${count === 1 ? 'caliber' : 'calibers'}`

const parts = [
  ['wrong', 'disagrees', 'with something wrong'],
  ['doubtful', 'doubtful', 'with a doubt'],
  ['sound', 'agrees', 'sound'],
  ['unproved', 'cannot-check', 'where nothing can be checked'],
] as const

const howFar = ({ state, proved, total }: SheetRun): string =>
  state === 'running'
    ? `Proving: ${figure(proved)} of ${calibers(total)}`
    : proved < total
      ? `${figure(proved)} of ${calibers(total)} proved, then stopped`
      : `${calibers(total)} proved`

/** How much was proved, how the calibers stand, and how far it has come. */
export const SheetSummary = ({ run }: { run: SheetRun }) => (
  <div className="sheet-summary">
    <p>
      <span className="sheet-far">{howFar(run)}</span>
      {parts
        .filter(([standing]) => run.calibers[standing] > 0)
        .map(([standing, outcome, says]) => (
          <span key={standing} className={`badge outcome-${outcome}`} data-standing={standing}>
            <OutcomeMark outcome={outcome} />
            {figure(run.calibers[standing])} {says}
          </span>
        ))}
    </p>
    {run.state === 'running' && (
      <progress aria-label="Calibers proved" value={run.proved} max={Math.max(1, run.total)} />
    )}
    <p className="out-of-sight" role="status">
      {run.state === 'running' ? 'Proving the library.' : howFar(run)}
    </p>
    {run.failure !== '' && <p role="alert">{run.failure}</p>}
    {run.leftOut > 0 && (
      <p>
        The first {figure(run.lines.length)} findings are listed and {figure(run.leftOut)} more are only counted. Put
        right what is listed, or leave out what cannot be checked, to see the rest.
      </p>
    )}
  </div>
)
