import type { ChannelPlan } from '../../../../shared-model/plan'
import { WINDOW_RISE_C } from '../../../../shared-model/structure'
import { FigureLine } from '../../../drawing/FigureLine'
import { useSay } from '../../../store/use-say'
import { StripPart } from '../StripPart'

const STATES = ['empty', 'filled', 'grown'] as const
const STATE_NAMES = { empty: 'Empty', filled: 'Filled', grown: 'Grown' } as const

/** One channel's weight and angle to tip, empty, filled and grown; its load on the sill, its sag, its growth with heat. */
export function WeightPart({ part }: { readonly part: ChannelPlan }) {
  const say = useSay()
  const { load } = part
  const grams = { empty: load.emptyG, filled: load.filledG, grown: load.grownG }
  return (
    <StripPart title="Weight and footing">
      <div className="table-holder">
        <table className="list close">
          <caption className="hidden-text">Weight and angle to tip</caption>
          <thead>
            <tr>
              <td />
              <th scope="col" className="number">
                Weight
              </th>
              <th scope="col" className="number">
                Tips at
              </th>
            </tr>
          </thead>
          <tbody>
            {STATES.map((state) => (
              <tr key={state}>
                <th scope="row">{STATE_NAMES[state]}</th>
                <td className="number">{say.mass(grams[state])}</td>
                <td className="number">{say.degrees(load.tipDeg[state])}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <dl className="fill-figures">
        <FigureLine name="On a metre of sill" value={`${say.number(load.newtonsPerMetre)} N`} />
        {load.sag === null ? (
          <FigureLine name="Sag" value="none: the sill carries it" />
        ) : (
          <>
            <FigureLine name={`Sag over ${say.length(load.sag.spanMm)}, new`} value={say.fine(load.sag.shortTermMm)} />
            <FigureLine name="Sag after years" value={say.fine(load.sag.longTermMm)} />
            <FigureLine name="Sag allowed" value={say.fine(load.sag.limitMm)} />
            <FigureLine name="Supports at most apart" value={say.length(load.sag.spacingNeededMm)} />
          </>
        )}
        <FigureLine name={`Grows, ${WINDOW_RISE_C} °C warmer`} value={say.fine(load.thermalGrowthMm)} />
      </dl>
    </StripPart>
  )
}
