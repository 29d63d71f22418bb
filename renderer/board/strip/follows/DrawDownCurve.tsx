import type { DrawDown } from '../../../../shared-model/reservoir'
import { useWidth } from '../../../drawing/use-width'
import { useSay } from '../../../store/use-say'

export interface DrawDownCurveProps {
  readonly drawDown: DrawDown
  readonly levelMm: number
  readonly endLevelMm: number
  readonly insideHeightMm: number
}

const HIGH = 150
const LEFT = 52
const RIGHT = 12
const HEAD = 12
const FOOT = 26

/** The level over the days, from the fill line down to the end level; refill and end marked on it. */
export function DrawDownCurve({ drawDown, levelMm, endLevelMm, insideHeightMm }: DrawDownCurveProps) {
  const { ref, width } = useWidth<HTMLDivElement>()
  const say = useSay()
  const { days, refillDay, endDay } = drawDown
  const lastDay = Math.max(1, days.at(-1)?.day ?? 1)
  const wide = Math.max(160, width)
  const x = (day: number): number => LEFT + (day / lastDay) * (wide - LEFT - RIGHT)
  const y = (level: number): number => HIGH - FOOT - (level / Math.max(insideHeightMm, 1e-9)) * (HIGH - HEAD - FOOT)
  const at = (day: number | null) => days.find((each) => each.day === day)
  const refill = at(refillDay)
  const end = at(endDay)
  return (
    <div ref={ref} className="ladder-chart">
      <svg
        className="drawing"
        width={wide}
        height={HIGH}
        viewBox={`0 0 ${wide} ${HIGH}`}
        role="img"
        aria-label={`Level over ${lastDay} days, from ${say.length(levelMm)} to ${say.length(days.at(-1)?.levelMm ?? 0)}`}
      >
        <polygon
          className="pen-water"
          points={[...days.map((d) => `${x(d.day)},${y(d.levelMm)}`), `${x(lastDay)},${y(0)}`, `${x(0)},${y(0)}`].join(
            ' '
          )}
        />
        <polyline className="pen-level" points={days.map((d) => `${x(d.day)},${y(d.levelMm)}`).join(' ')} />
        <line className="pen-end-level" x1={x(0)} x2={x(lastDay)} y1={y(endLevelMm)} y2={y(endLevelMm)} />
        <path className="pen-thin" d={`M${x(0)} ${y(insideHeightMm)}V${y(0)}H${x(lastDay)}`} />
        <text x={x(0) - 5} y={y(levelMm) + 4} textAnchor="end">
          {say.length(levelMm)}
        </text>
        {Math.abs(y(endLevelMm) - y(levelMm)) > 14 ? (
          <text className="soft" x={x(0) - 5} y={y(endLevelMm) + 4} textAnchor="end">
            {say.length(endLevelMm)}
          </text>
        ) : null}
        {refill === undefined ? null : (
          <Mark
            x={x(refill.day)}
            y={y(refill.levelMm)}
            text={`refill, day ${refill.day}`}
            right={x(refill.day) > wide / 2}
          />
        )}
        {end === undefined || endDay === refillDay ? null : (
          <Mark x={x(end.day)} y={y(end.levelMm)} text={`end, day ${end.day}`} right={x(end.day) > wide / 2} />
        )}
        <text className="soft" x={x(0)} y={HIGH - 8}>
          day 0
        </text>
        <text className="soft" x={x(lastDay)} y={HIGH - 8} textAnchor="end">
          day {lastDay}
        </text>
      </svg>
    </div>
  )
}

function Mark({
  x,
  y,
  text,
  right
}: {
  readonly x: number
  readonly y: number
  readonly text: string
  readonly right: boolean
}) {
  return (
    <g>
      <circle className="ladder-mark" cx={x} cy={y} r={4} />
      <text x={right ? x - 2 : x + 7} y={right ? y - 22 : y - 8} textAnchor={right ? 'end' : 'start'}>
        {text}
      </text>
    </g>
  )
}
