import { FigureLine } from '../../../drawing/FigureLine'
import { useLivePlan, usePlanState } from '../../../plan/use-plan'
import { useSay } from '../../../store/use-say'
import { StripPart } from '../StripPart'

const CARRY = {
  yes: 'may be carried filled',
  'fill-in-place': 'place empty, fill in place',
  'not-by-one-person': 'not by one person, fill in place'
} as const

/** All that stands on the sill: every channel's weight, what the sill bears, and how the heaviest may be lifted. */
export function SillWeight() {
  const some = usePlanState(({ live }) => live.channels.length > 0)
  return some ? (
    <StripPart title="Weight on the sill">
      <Weights />
    </StripPart>
  ) : null
}

/** Worked out only while it is unfolded: it changes with every move. */
function Weights() {
  const { load, channels } = useLivePlan()
  const say = useSay()
  const { lift, shareOfLimit } = load
  return (
    <>
      <div className="table-holder">
        <table className="list close">
          <caption className="hidden-text">Weight of each channel and of all</caption>
          <thead>
            <tr>
              <th scope="col">Channel</th>
              <th scope="col" className="number">
                Empty
              </th>
              <th scope="col" className="number">
                Filled
              </th>
              <th scope="col" className="number">
                Grown
              </th>
            </tr>
          </thead>
          <tbody>
            {channels.map((each) => (
              <tr key={each.channelId}>
                <th scope="row">{each.mark}</th>
                <td className="number">{say.mass(each.load.emptyG)}</td>
                <td className="number">{say.mass(each.load.filledG)}</td>
                <td className="number">{say.mass(each.load.grownG)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">All</th>
              <td className="number">{say.mass(load.emptyG)}</td>
              <td className="number">{say.mass(load.filledG)}</td>
              <td className="number">{say.mass(load.grownG)}</td>
            </tr>
          </tfoot>
        </table>
      </div>
      <dl className="fill-figures">
        <FigureLine name="On a metre of sill" value={`${say.number(load.newtonsPerMetre)} N`} />
        <FigureLine
          name="Of your own limit"
          value={shareOfLimit === null ? 'none given; no published one exists' : say.share(shareOfLimit)}
        />
        <FigureLine name="Heaviest, filled" value={say.mass(lift.heaviestFilledG)} />
        <FigureLine name="To lift over a sill, at most" value={say.mass(lift.recommendedG)} />
        <FigureLine name="Lifting" value={CARRY[lift.carryFilled]} />
      </dl>
      <p className="quiet small">Revised NIOSH lifting equation, 1994: reach 20 in, hands at 36 in, fair grip.</p>
    </>
  )
}
