import type { BarrelSizes } from '../../core/formulas/barrel.ts'
import { type Coil, coilPacks, coilsOf } from '../../core/springs/coil-radii.ts'

/** A barrel with its strip, as far as it is known; the sizes are those that the coils have. */
export interface DrawnBarrel {
  readonly sizes: BarrelSizes
  /** Inside of the drum itself, where a bridle lines it. */
  readonly drumInsideMm: number
  readonly barrelDepthMm: number | undefined
  readonly springHeightMm: number | undefined
}

/** Drawing units across the barrel's inside. */
const across = 240
const wallThickness = 7
/** A strip is drawn a little thinner than it is, so that coils are told apart. */
const drawnShare = 0.7
const half = across / 2 + wallThickness
const gap = 26

const point = (radius: number, share: number) => {
  const angle = 2 * Math.PI * share - Math.PI / 2
  return `${(radius * Math.cos(angle)).toFixed(2)} ${(radius * Math.sin(angle)).toFixed(2)}`
}

const Round = ({ radius, share, width }: { radius: number; share: number; width: number }) =>
  share >= 1 ? (
    <circle r={radius} className="strip" strokeWidth={width} />
  ) : (
    <path
      d={`M${point(radius, 0)}A${radius} ${radius} 0 ${share > 0.5 ? 1 : 0} 1 ${point(radius, share)}`}
      className="strip"
      strokeWidth={width}
    />
  )

/** A size with its thin line between two ends. */
const Across = ({ from, to, y, text }: { from: number; to: number; y: number; text: string }) => (
  <g className="size-line">
    <path d={`M${from} ${y - 4}V${y + 4}M${to} ${y - 4}V${y + 4}M${from} ${y}H${to}`} />
    <text x={(from + to) / 2} y={y + 14}>
      {text}
    </text>
  </g>
)

const Down = ({ from, to, x, text }: { from: number; to: number; x: number; text: string }) => (
  <g className="size-line">
    <path d={`M${x - 4} ${from}H${x + 4}M${x - 4} ${to}H${x + 4}M${x} ${from}V${to}`} />
    <text x={x + 7} y={(from + to) / 2 + 4} className="beside-line">
      {text}
    </text>
  </g>
)

/** A barrel from above and, where its depth is known, cut through, with its strip wound some turns. To scale. */
export const BarrelViews = ({
  barrel: { sizes, drumInsideMm, barrelDepthMm, springHeightMm },
  turnsWound,
  title,
  titleId,
}: {
  barrel: DrawnBarrel
  turnsWound: number
  title: string
  titleId: string
}) => {
  const packs = coilPacks(sizes, turnsWound)
  const scale = across / drumInsideMm
  const e = sizes.springThicknessMm
  const wall = coilsOf(packs.wall, e, 'inwards')
  const onHub = coilsOf(packs.hub, e, 'outwards')
  const hub = (sizes.barrelArborMm / 2) * scale
  const width = e * scale * drawnShare
  const rounds = (name: string, coils: readonly Coil[]) =>
    coils.map(({ radiusMm, share }, index) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: coils are known by their place in the pack
      <Round key={`${name} ${index}`} radius={radiusMm * scale} share={share} width={width} />
    ))
  const inside = across / 2
  const depth = barrelDepthMm === undefined ? null : barrelDepthMm * scale
  const strip = springHeightMm === undefined ? null : springHeightMm * scale
  const top = half + gap + 12
  const foot = depth === null ? gap : gap + 12 + depth + 2 * wallThickness + 6
  return (
    <svg
      viewBox={`${-half - 2} ${-half - 2} ${2 * half + 84} ${2 * half + 4 + foot}`}
      role="img"
      aria-labelledby={titleId}
      className="barrel-section"
    >
      <title id={titleId}>{title}</title>
      <circle r={inside + wallThickness / 2} className="drum" strokeWidth={wallThickness} />
      {drumInsideMm > sizes.barrelInsideMm && (
        <circle
          r={((drumInsideMm + sizes.barrelInsideMm) / 4) * scale}
          className="bridle"
          strokeWidth={((drumInsideMm - sizes.barrelInsideMm) / 2) * scale}
        />
      )}
      {rounds('wall', wall)}
      {rounds('hub', onHub)}
      <circle r={hub} className="hub" />
      <Across from={-inside} to={inside} y={half + 7} text={`inside ${drumInsideMm} mm`} />
      {depth !== null && (
        <g transform={`translate(0 ${top})`}>
          <path
            className="metal"
            fillRule="evenodd"
            d={`M${-half} 0H${half}V${depth + 2 * wallThickness}H${-half}ZM${-inside} ${wallThickness}V${depth + wallThickness}H${inside}V${wallThickness}Z`}
          />
          <rect x={-hub} y={0} width={2 * hub} height={depth + 2 * wallThickness} className="hub" />
          {strip !== null &&
            [...wall, ...onHub].flatMap(({ radiusMm, share }) =>
              (share > 0.5 ? [-1, 1] : [1]).map((side) => (
                <rect
                  key={`${radiusMm} ${side}`}
                  x={side * radiusMm * scale - width / 2}
                  y={wallThickness + (depth - strip) / 2}
                  width={width}
                  height={Math.max(strip, 1)}
                  className="strip-cut"
                />
              )),
            )}
          <Down from={wallThickness} to={wallThickness + depth} x={half + 9} text={`${barrelDepthMm} deep`} />
        </g>
      )}
    </svg>
  )
}
