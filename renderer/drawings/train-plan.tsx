import { useId } from 'react'
import { type Arbor, goingTrain } from '../../core/formulas/going-train.ts'
import type { CaliberValues } from '../../core/record/caliber.ts'
import { layTrain, type PitchCircle, type PlacedArbor } from './train-layout.ts'
import { turnsText } from './turns-text.ts'

const names: Readonly<Record<Arbor['arbor'], string>> = {
  barrel: 'Barrel',
  intermediate: 'Intermediate',
  centre: 'Centre',
  third: 'Third',
  fourth: 'Fourth',
  fifth: 'Fifth',
  escape: 'Escape',
  sweep: 'Sweep seconds',
}

const count = (number: number | undefined) => (number === undefined ? '–' : String(number))

const countsText = ({ arbor, wheel, pinion }: Arbor): string => {
  if (arbor === 'barrel') return `${count(wheel)} teeth`
  if (arbor === 'sweep') return `${count(pinion)} leaves`
  return `${count(pinion)} leaves, ${count(wheel)} teeth`
}

/** A pitch circle with as many dashes as there are teeth; one plain broken line where the count is not stated. */
const Toothed = ({ x, y, circle, part }: { x: number; y: number; circle: PitchCircle; part: string }) =>
  circle.teeth === null ? (
    <circle cx={x} cy={y} r={circle.radius} className="pitch guessed" />
  ) : (
    <>
      <circle cx={x} cy={y} r={circle.radius} className={`pitch ${part}`} />
      <circle
        cx={x}
        cy={y}
        r={circle.radius}
        className={`teeth ${part}`}
        pathLength={circle.teeth * 2}
        strokeDasharray="1 1"
      />
    </>
  )

const Circles = ({ placed: { x, y, wheel, pinion, sweepDriver } }: { placed: PlacedArbor }) => (
  <g>
    {wheel && <Toothed x={x} y={y} circle={wheel} part="wheel" />}
    {sweepDriver && <Toothed x={x} y={y} circle={sweepDriver} part="wheel" />}
    {pinion && <Toothed x={x} y={y} circle={pinion} part="pinion" />}
    <circle cx={x} cy={y} r={1.8} className="pivot" />
  </g>
)

const Label = ({ placed: { x, y, label }, arbor }: { placed: PlacedArbor; arbor: Arbor }) => {
  const above = label.row === 'above'
  const first = above ? label.y - 36 : label.y + 14
  return (
    <g>
      <path d={`M${x} ${y}L${label.x} ${above ? label.y + 4 : label.y - 2}`} className="leader" />
      <text x={label.x} y={first} className="arbor-name">
        {names[arbor.arbor]}
      </text>
      <text x={label.x} y={first + 16}>
        {countsText(arbor)}
      </text>
      <text x={label.x} y={first + 32} className="turns">
        {turnsText(arbor.turnsPerHour)}
      </text>
    </g>
  )
}

/** The going train in plan, each wheel meshing with the pinion that it drives, with counts and turns an hour. */
export const TrainPlan = ({ values }: { values: CaliberValues }) => {
  const title = useId()
  const train = goingTrain(values)
  if (train.arbors.every(({ wheel, pinion }) => wheel === undefined && pinion === undefined)) return null
  const layout = layTrain(train)
  const words = train.arbors
    .map((arbor) => `${names[arbor.arbor]}: ${countsText(arbor)}, ${turnsText(arbor.turnsPerHour)}.`)
    .join(' ')
  const guessed = layout.arbors.some(({ wheel, pinion }) => wheel?.teeth === null || pinion?.teeth === null)
  return (
    <figure className="drawing">
      <div className="drawing-scroll">
        <svg
          viewBox={`0 0 ${layout.width} ${Math.ceil(layout.height)}`}
          role="img"
          aria-labelledby={title}
          className="train-plan"
        >
          <title id={title}>{`Going train in plan. ${words}`}</title>
          {layout.arbors.map((placed) => (
            <Circles key={placed.arbor} placed={placed} />
          ))}
          {layout.arbors.map((placed) => {
            const arbor = train.arbors.find((one) => one.arbor === placed.arbor)
            return arbor && <Label key={placed.arbor} placed={placed} arbor={arbor} />
          })}
        </svg>
      </div>
      <figcaption>
        Going train in plan. Only counts are known, so sizes follow them by one module a mesh, finer towards the
        escapement; the escape wheel is drawn larger.
        {guessed && ' A broken line stands for a count that is not stated.'}
      </figcaption>
    </figure>
  )
}
