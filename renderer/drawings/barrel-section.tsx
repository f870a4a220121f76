import { useId, useState } from 'react'
import type { CaliberValues } from '../../core/record/caliber.ts'
import { coilSpace } from '../../core/springs/barrel-sizes.ts'
import { fitSpring } from '../../core/springs/fit.ts'
import { type CoilRing, coilRings } from './coil-rings.ts'

/** Drawing units across the barrel's inside. */
const across = 240
const wallThickness = 7

const figure = (value: number | null, decimals: number, unit = '') =>
  value === null ? '–' : `${value.toFixed(decimals)}${unit}`

const Ring = ({ ring, scale, strip }: { ring: CoilRing; scale: number; strip: number }) => (
  <g>
    {ring.coils.map((radius) => (
      <circle key={radius} r={radius * scale} className="strip" strokeWidth={strip * scale * 0.62} />
    ))}
  </g>
)

/** The barrel seen from above and cut through, with the strip let down, wound, or between. */
export const BarrelSection = ({ values }: { values: CaliberValues }) => {
  const [wound, setWound] = useState(0)
  const title = useId()
  const { barrelInsideMm, barrelArborMm, springThicknessMm, springLengthMm, barrelDepthMm, springHeightMm } = values
  const fit = fitSpring(values)
  if (
    barrelInsideMm === undefined ||
    barrelArborMm === undefined ||
    springThicknessMm === undefined ||
    springLengthMm === undefined ||
    fit.turns === null
  )
    return null

  const free = coilSpace(values, barrelInsideMm)
  const rings = coilRings({ barrelInsideMm: free, barrelArborMm, springThicknessMm, springLengthMm }, wound)
  const scale = across / barrelInsideMm
  const inside = across / 2
  const hub = (barrelArborMm / 2) * scale
  const half = inside + wallThickness
  const depth = barrelDepthMm === undefined ? null : barrelDepthMm * scale
  const strip = springHeightMm === undefined ? null : springHeightMm * scale
  const sectionTop = half + 18
  const below = depth === null ? 0 : depth + 2 * wallThickness + 18
  const cut = [rings.wall, rings.hub].filter(({ coils }) => coils.length > 0)
  const facts = [
    ['Coils let down', figure(fit.coilsDown, 2)],
    ['Coils wound', figure(fit.coilsWound, 2)],
    ['Turns of the barrel', figure(fit.turns, 2)],
    ['Space filled', fit.fill === null ? '–' : figure(fit.fill * 100, 1, ' %')],
    ['Best length', figure(fit.bestLengthMm, 0, ' mm')],
    ['Clearance in height', figure(fit.heightClearanceMm, 2, ' mm')],
  ] as const
  const words = facts.map(([label, value]) => `${label} ${value}`).join(', ')
  return (
    <figure className="drawing barrel-drawing">
      <svg
        viewBox={`${-half - 2} ${-half - 2} ${2 * half + 4} ${2 * half + 4 + below}`}
        role="img"
        aria-labelledby={title}
        className="barrel-section"
      >
        <title id={title}>{`Barrel to scale: inside ${barrelInsideMm} mm, hub ${barrelArborMm} mm. ${words}.`}</title>
        <circle r={inside + wallThickness / 2} className="drum" strokeWidth={wallThickness} />
        <Ring ring={rings.wall} scale={scale} strip={springThicknessMm} />
        <Ring ring={rings.hub} scale={scale} strip={springThicknessMm} />
        <circle r={hub} className="hub" />
        {depth !== null && (
          <g transform={`translate(0 ${sectionTop})`}>
            <path
              className="metal"
              fillRule="evenodd"
              d={`M${-half} 0H${half}V${depth + 2 * wallThickness}H${-half}ZM${-inside} ${wallThickness}V${depth + wallThickness}H${inside}V${wallThickness}Z`}
            />
            <rect x={-hub} y={0} width={2 * hub} height={depth + 2 * wallThickness} className="hub" />
            {strip !== null &&
              cut.flatMap(({ coils }) =>
                coils.flatMap((radius) =>
                  [-1, 1].map((side) => (
                    <rect
                      key={`${radius} ${side}`}
                      x={side * radius * scale - springThicknessMm * scale * 0.31}
                      y={wallThickness + (depth - strip) / 2}
                      width={springThicknessMm * scale * 0.62}
                      height={Math.max(strip, 1)}
                      className="strip-cut"
                    />
                  )),
                ),
              )}
          </g>
        )}
      </svg>
      <div className="barrel-side">
        <label className="wind">
          <span>Let down</span>
          <input
            type="range"
            min="0"
            max="100"
            value={Math.round(wound * 100)}
            aria-label="Strip let down or wound"
            aria-valuetext={
              wound === 0
                ? 'let down'
                : wound === 1
                  ? 'wound'
                  : `${Math.round(wound * 100)} % of the strip round the hub`
            }
            onChange={(event) => setWound(Number(event.target.value) / 100)}
          />
          <span>Wound</span>
        </label>
        <dl className="facts">
          {facts.map(([label, value]) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      </div>
      <figcaption>
        Barrel to scale{depth === null ? '' : ', from above and cut through'}; turns are those of an ideal spring.
      </figcaption>
    </figure>
  )
}
