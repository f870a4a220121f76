import { Copy } from 'lucide-react'
import type { ReactNode } from 'react'
import { Link } from 'wouter'
import type { Source } from '../../../core/exchange/library-file.ts'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import { orderOfSpring } from '../../../core/orders/order-of-spring.ts'
import { formatQuantity } from '../../../core/quantities/format-quantity.ts'
import type { Caliber, CaliberValues } from '../../../core/record/caliber.ts'
import { springLine } from '../../../core/springs/spring-line.ts'
import { useCommands } from '../../components/commands.ts'
import { GaugeLine } from '../../components/gauge-line.tsx'
import { MissingValue } from '../../components/missing-value.tsx'
import { OrderButton } from '../../components/order-button.tsx'
import { SourceMark } from '../../components/source-mark.tsx'
import { useCopiedSpring } from '../../components/use-copied-spring.ts'
import { wordChoice } from '../../components/word-value.ts'

const Small = ({ label, children }: { label: string; children: ReactNode }) => (
  <span className="small-figure">
    <span className="quiet">{label}</span> {children}
  </span>
)

interface SpringLineProps {
  readonly id: number
  readonly name: string
  readonly caliber: Caliber
  readonly sources: readonly Source[]
}

/** Height × thickness × length, large, with what else an order needs. */
export const SpringLine = ({ id, name, caliber, sources }: SpringLineProps) => {
  const {
    springHeightMm: height,
    springThicknessMm: thickness,
    springLengthMm: length,
    barrelInsideMm,
    springEnd,
  } = caliber.values
  const known = height !== undefined && thickness !== undefined && length !== undefined
  const sizes = { heightMm: height, thicknessMm: thickness, lengthMm: length, barrelMm: barrelInsideMm }
  const text = springLine(sizes, 'height-thickness-length')
  const reading = caliber.readings.springThicknessMm?.find(({ chosen }) => chosen)
  const { copy } = useCopiedSpring(caliber.values, name)
  useCommands([{ label: 'Copy the spring', keys: ['C'], run: copy }])
  const order = orderOfSpring(caliber, (key) => sources.find((source) => source.key === key)?.title ?? key)
  const missing: CaliberFieldKey =
    height === undefined ? 'springHeightMm' : thickness === undefined ? 'springThicknessMm' : 'springLengthMm'
  return (
    <div className="bench-line">
      <h2>Spring</h2>
      <p className="hero">
        {known ? text : <MissingValue id={id} field={missing} text={text} />} <span className="unit">mm</span>
      </p>
      <div className="beside">
        <Small label="barrel">
          {barrelInsideMm === undefined ? <MissingValue id={id} field="barrelInsideMm" /> : barrelInsideMm.toFixed(2)}
        </Small>
        <Small label="end">
          {springEnd === undefined ? <MissingValue id={id} field="springEnd" /> : wordChoice('springEnd', springEnd)}
        </Small>
        {reading && <SourceMark reading={reading} sources={sources} />}
        {known && (
          <button type="button" className="text-button copy" onClick={copy}>
            <Copy aria-hidden="true" /> Copy <kbd>C</kbd>
          </button>
        )}
        <span className="bench-links">
          <Link href={`/caliber/${id}/spring`}>Spring bench</Link>
        </span>
        {order && <OrderButton line={order} label="Order" />}
      </div>
      <GaugeLine caliber={caliber} />
    </div>
  )
}

/** Beats an hour, large, with what a timing machine asks for. */
export const BeatLine = ({ id, values }: { id: number; values: CaliberValues }) => {
  const { beatRateVph: vph, liftAngleDeg, goingHours, jewelsStated } = values
  const facts = [
    ['lift', 'liftAngleDeg', liftAngleDeg === undefined ? null : formatQuantity('angle', liftAngleDeg)],
    ['going', 'goingHours', goingHours === undefined ? null : formatQuantity('duration', goingHours)],
    ['jewels', 'jewelsStated', jewelsStated === undefined ? null : String(jewelsStated)],
  ] as const
  return (
    <div className="bench-line">
      <h2>Beat</h2>
      <p className="hero">
        {vph === undefined ? <MissingValue id={id} field="beatRateVph" /> : formatQuantity('rate', vph)}{' '}
        <span className="unit">vph</span>
      </p>
      <div className="beside">
        {vph !== undefined && <Small label="balance">{Number((vph / 7200).toFixed(3))} Hz</Small>}
        {facts.map(([label, field, text]) => (
          <Small key={label} label={label}>
            {text ?? <MissingValue id={id} field={field} />}
          </Small>
        ))}
        <span className="bench-links">
          <Link href={`/rate/${id}`}>Amplitude</Link>
          <Link href={`/caliber/${id}/counted`}>Counted on the bench</Link>
          <Link href={`/play/${id}`}>Play</Link>
        </span>
      </div>
    </div>
  )
}
