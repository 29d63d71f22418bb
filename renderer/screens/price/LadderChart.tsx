import type { LadderStep } from '../../../shared-model/pricing'
import { useWidth } from '../../drawing/use-width'
import { useSay } from '../../store/use-say'

const HEIGHT = 230
const LEFT = 92
const RIGHT = 24
const TOP = 26
const BOTTOM = 58

interface LadderChartProps {
  readonly steps: readonly LadderStep[]
  readonly sizes: readonly number[]
}

/** Cost of one over the batch size; a square marks another bar, a ring another pack. */
export function LadderChart({ steps, sizes }: LadderChartProps) {
  const say = useSay()
  const { ref, width } = useWidth<HTMLDivElement>()
  const most = Math.max(0, ...steps.map((step) => step.unitCostMinor ?? 0))
  const x = (units: number): number =>
    LEFT + (sizes.length < 2 ? 0 : (sizes.indexOf(units) / (sizes.length - 1)) * (width - LEFT - RIGHT))
  const y = (minor: number): number => TOP + (1 - minor / most) * (HEIGHT - TOP - BOTTOM)
  const known = steps.flatMap((step) =>
    step.unitCostMinor === null ? [] : [{ ...step, x: x(step.units), y: y(step.unitCostMinor) }]
  )
  if (most === 0) return <p className="quiet">There is no cost to draw yet, for the reason above.</p>
  const floor = HEIGHT - BOTTOM
  return (
    <div ref={ref} className="ladder-chart">
      {width < LEFT + RIGHT + 40 ? null : (
        <svg
          role="img"
          aria-label={`Cost of one: ${known.map((step) => `${step.units} units ${say.money(step.unitCostMinor ?? 0)}`).join(', ')}`}
          width={width}
          height={HEIGHT}
          viewBox={`0 0 ${width} ${HEIGHT}`}
        >
          {[0, most / 2, most].map((minor) => (
            <g key={minor}>
              <line className="pen-thin" x1={LEFT} x2={width - RIGHT} y1={y(minor)} y2={y(minor)} />
              <text x={LEFT - 8} y={y(minor) + 4} textAnchor="end">
                {say.money(Math.round(minor))}
              </text>
            </g>
          ))}
          {sizes.map((units) => (
            <text key={units} x={x(units)} y={floor + 38} textAnchor="middle">
              {units}
            </text>
          ))}
          <polyline className="ladder-line" points={known.map((step) => `${step.x},${step.y}`).join(' ')} />
          {known.map((step) => (
            <g key={step.units}>
              <circle className="pen-bar" cx={step.x} cy={step.y} r="4" />
              {step.opensStock ? (
                <rect className="ladder-mark" x={step.x - 11} y={floor + 10} width="9" height="9" />
              ) : null}
              {step.opensPack ? <circle className="ladder-mark" cx={step.x + 7} cy={floor + 14.5} r="4.5" /> : null}
            </g>
          ))}
        </svg>
      )}
      <p className="quiet small">Across: units in the batch. Square: another bar. Ring: another pack.</p>
    </div>
  )
}
