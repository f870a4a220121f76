import { useId } from 'react'
import { gaugeStripText } from '../../core/wording/measured-text.ts'
import { gaugeStripLayout, type StripAsked, stripMargin, stripWidth } from './gauge-strip-layout.ts'
import './gauge-strip.css'

/** Drawing units from the top: the reading, the sound stretch, the scale, and the foot of the ticks. */
const top = 3
const readingLine = 9
const bandTop = 16
const scaleLine = 25
const foot = 29
const height = 32
/** A whisker no longer than this would hide behind the lozenge. */
const leastWhisker = 10

interface GaugeStripProps extends StripAsked {
  readonly unit: 'mm' | '°'
}

/**
 * Limits as a stretch between two strokes, and the reading above it: a lozenge with a whisker as long as it may be off.
 * To scale from nothing at the left; an arrow tells what lies past the end.
 */
export const GaugeStrip = ({ unit, ...asked }: GaugeStripProps) => {
  const id = useId()
  const { band, mark, ticks } = gaugeStripLayout(asked)
  const end = stripWidth - stripMargin
  return (
    <svg className="gauge-strip" viewBox={`0 0 ${stripWidth} ${height}`} role="img" aria-labelledby={id}>
      <title id={id}>{gaugeStripText(asked.limits, asked.reading, unit)}</title>
      {band && (
        <>
          <rect
            className="gauge-sound"
            x={band.from}
            y={bandTop}
            width={band.to - band.from}
            height={scaleLine - bandTop}
          />
          <path
            className="gauge-limit"
            d={`M${band.from} ${top}V${foot}${band.open ? '' : `M${band.to} ${top}V${foot}`}`}
          />
        </>
      )}
      <path
        className="gauge-scale"
        d={`M${stripMargin} ${scaleLine}H${end}${ticks.map((x) => `M${x} ${scaleLine}V${foot}`).join('')}`}
      />
      {mark && mark.to - mark.from > leastWhisker && (
        <path
          className="gauge-off"
          d={`M${mark.from} ${readingLine}H${mark.to}M${mark.from} ${readingLine - 3.5}v7${mark.past ? '' : `M${mark.to} ${readingLine - 3.5}v7`}`}
        />
      )}
      {mark && (
        <path
          className="gauge-reading"
          d={
            mark.past
              ? `M${end - 9} ${readingLine - 5}L${end + 2} ${readingLine}L${end - 9} ${readingLine + 5}Z`
              : `M${mark.at} ${readingLine - 5}l4.5 5l-4.5 5l-4.5 -5Z`
          }
        />
      )}
    </svg>
  )
}
