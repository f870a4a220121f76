import { type ReactNode, useMemo } from 'react'
import { Link } from 'wouter'
import type { Caliber } from '../../core/record/caliber.ts'
import { type GaugeOfCaliber, gaugeReads } from '../../core/springs/gauge-reads.ts'
import { gaugeDoubt, gaugeSentence } from '../../core/wording/gauge-sentence.ts'
import { useGauges } from '../api/hooks.ts'
import { OutcomeMark } from './outcome-mark.tsx'
import './gauge-line.css'

interface GaugeLineProps {
  readonly caliber: Caliber
  /** What can be done with a size that the tables give. */
  readonly action?: (read: GaugeOfCaliber, printed: string) => ReactNode
}

/** The old gauge number of a caliber's spring as printed, and beside it what its owner's tables make of it. */
export const GaugeLine = ({ caliber, action }: GaugeLineProps) => {
  const gauges = useGauges().data?.gauges
  const found = useMemo(() => (gauges === undefined ? null : gaugeReads(caliber, gauges)), [caliber, gauges])
  const printed = caliber.values.springGauge
  if (printed === undefined) return null
  return (
    <div className="gauge-line">
      <p>
        <span className="quiet">gauge</span> <span>{printed}</span>{' '}
        <Link href="/gauges" className="copy">
          Gauge tables
        </Link>
      </p>
      {found?.reads.map((read) => (
        <p key={read.measures} className={read.beside?.agrees === false ? 'outcome-doubtful' : undefined}>
          {read.beside?.agrees === false && <OutcomeMark outcome="doubtful" />}
          <span>{gaugeSentence(read)}</span> {action?.(read, found.printed)}
        </p>
      ))}
      {found?.doubts.map((doubt) => (
        <p key={gaugeDoubt(doubt)} className="quiet">
          Not looked up. {gaugeDoubt(doubt)}
        </p>
      ))}
    </div>
  )
}
