import { useId } from 'react'
import { OutsideRange } from '../../core/formulas/outside-range.ts'
import type { CaliberValues } from '../../core/record/caliber.ts'
import { coilSpace } from '../../core/springs/barrel-sizes.ts'
import { fitSpring } from '../../core/springs/fit.ts'
import './springs-beside.css'

/** Drawing units across the barrel's inside, and of a wall. */
const across = 400
const wall = 8

export interface DrawnStrip {
  readonly name: string
  readonly heightMm: number | undefined
  readonly thicknessMm: number | undefined
  readonly lengthMm: number | undefined
}

const sizesOf = (values: CaliberValues, strip: DrawnStrip): CaliberValues => ({
  ...(values.barrelInsideMm !== undefined && { barrelInsideMm: values.barrelInsideMm }),
  ...(values.barrelArborMm !== undefined && { barrelArborMm: values.barrelArborMm }),
  ...(values.barrelDepthMm !== undefined && { barrelDepthMm: values.barrelDepthMm }),
  ...(values.springEnd !== undefined && { springEnd: values.springEnd }),
  ...(values.bridleThicknessMm !== undefined && { bridleThicknessMm: values.bridleThicknessMm }),
  ...(strip.heightMm !== undefined && { springHeightMm: strip.heightMm }),
  ...(strip.thicknessMm !== undefined && { springThicknessMm: strip.thicknessMm }),
  ...(strip.lengthMm !== undefined && { springLengthMm: strip.lengthMm }),
})

const inWords = (values: CaliberValues, strip: DrawnStrip): string => {
  const { coilsDown, coilsWound, turns, heightClearanceMm: play } = fitSpring(sizesOf(values, strip))
  const coils =
    coilsDown === null || coilsWound === null || turns === null
      ? 'coils not known'
      : `${coilsDown.toFixed(1)} coils let down, ${coilsWound.toFixed(1)} wound, ${turns.toFixed(1)} theoretical turns`
  const height =
    play === null
      ? 'play under the lid not known'
      : play < 0
        ? `${(-play).toFixed(2)} mm higher than the barrel is deep`
        : `${play.toFixed(2)} mm of play under the lid`
  return `${strip.name}: ${coils}, ${height}`
}

interface CutProps {
  readonly insideMm: number
  readonly hubMm: number
  readonly spaceMm: number
  readonly depthMm: number
  readonly strip: DrawnStrip
  readonly coilsDown: number | null
  readonly coilsWound: number | null
}

/** Radii at which whole coils lie, from one that is given. */
const radii = (fromMm: number, stepMm: number, coils: number | null): readonly number[] =>
  Array.from({ length: Math.round(coils ?? 0) }, (_, index) => fromMm + (index + 0.5) * stepMm)

/** One barrel cut through the middle: the strip let down on the left, wound on the right. */
const Cut = ({ insideMm, hubMm, spaceMm, depthMm, strip, coilsDown, coilsWound }: CutProps) => {
  const scale = across / insideMm
  const [inside, hub, depth] = [across / 2, (hubMm / 2) * scale, depthMm * scale]
  const { heightMm = 0, thicknessMm = 0 } = strip
  const height = heightMm * scale
  const width = thicknessMm * scale * 0.66
  const pack = (at: readonly number[], side: -1 | 1) =>
    at.map((radius) => (
      <rect
        key={radius}
        className={height > depth ? 'strip-cut over' : 'strip-cut'}
        x={side * radius * scale - width / 2}
        y={wall + depth - height}
        width={width}
        height={height}
      />
    ))
  return (
    <>
      <path
        className="metal"
        fillRule="evenodd"
        d={`M${-inside - wall} 0H${inside + wall}V${depth + 2 * wall}H${-inside - wall}ZM${-inside} ${wall}V${depth + wall}H${inside}V${wall}Z`}
      />
      <rect x={-hub} y={0} width={2 * hub} height={depth + 2 * wall} className="hub" />
      {pack(radii(spaceMm / 2, -thicknessMm, coilsDown), -1)}
      {pack(radii(hubMm / 2, thicknessMm, coilsWound), 1)}
    </>
  )
}

const spaceWithin = (values: CaliberValues, insideMm: number): number => {
  try {
    return coilSpace(values, insideMm)
  } catch (error) {
    if (error instanceof OutsideRange) return insideMm
    throw error
  }
}

/** Strips in the same barrel, cut through and to one scale: let down on the left, wound on the right. */
export const SpringsBeside = ({ values, strips }: { values: CaliberValues; strips: readonly DrawnStrip[] }) => {
  const title = useId()
  const { barrelInsideMm: insideMm, barrelArborMm: hubMm, barrelDepthMm: depthMm } = values
  if (insideMm === undefined || hubMm === undefined || depthMm === undefined || hubMm >= insideMm)
    return <p className="quiet">The drawing needs inside, hub and depth of the barrel.</p>
  const spaceMm = spaceWithin(values, insideMm)
  const row = (depthMm / insideMm) * across + 2 * wall + 56
  const half = across / 2 + wall
  return (
    <figure className="drawing springs-beside">
      <svg viewBox={`${-half - 2} -26 ${2 * half + 4} ${row * strips.length + 4}`} role="img" aria-labelledby={title}>
        <title id={title}>
          {`Barrel cut through, to scale: inside ${insideMm} mm, hub ${hubMm} mm, depth ${depthMm} mm. ${strips
            .map((strip) => inWords(values, strip))
            .join('. ')}.`}
        </title>
        {strips.map((strip, at) => (
          <g key={strip.name} transform={`translate(0 ${at * row})`}>
            <text x={-half} y={-9} className="strip-name">
              {strip.name}
            </text>
            <Cut
              insideMm={insideMm}
              hubMm={hubMm}
              spaceMm={spaceMm}
              depthMm={depthMm}
              strip={strip}
              coilsDown={fitSpring(sizesOf(values, strip)).coilsDown}
              coilsWound={fitSpring(sizesOf(values, strip)).coilsWound}
            />
            <text x={-across / 4} y={row - 38} className="turns">
              let down
            </text>
            <text x={across / 4} y={row - 38} className="turns">
              wound
            </text>
          </g>
        ))}
      </svg>
      <figcaption>Barrel cut through, to scale; the strips stand on the floor.</figcaption>
    </figure>
  )
}
