import type { Interface, SeatFit } from '../../../shared-model/seating'
import { HOLD_NAMES, type Say } from '../../../shared-model/words'
import { useLivePlan } from '../../plan/use-plan'
import { useSay } from '../../store/use-say'

/** Each part of a seat from the hole up: what it sits in, how, and its figures; then the stack's heights. */
export function SeatStack({
  channelId,
  siteId,
  nameOf
}: {
  readonly channelId: string
  readonly siteId: string
  readonly nameOf: (partId: string) => string
}) {
  const say = useSay()
  const part = useLivePlan().channels.find((each) => each.channelId === channelId)
  const seat = part?.seats.find((each) => each.siteId === siteId)
  if (seat === undefined) return null
  return (
    <section aria-label="How it sits">
      <h3>How it sits</h3>
      <ol className="stack-list">
        {seat.interfaces.toReversed().map((each) => (
          <li key={`${each.kind} ${each.partId}`}>
            <strong>{nameOf(each.partId)}</strong> {HOLD_NAMES[each.hold]}
            <div className="quiet small">
              {[
                `in ${each.on === 'face' ? 'the face' : nameOf(each.on)}, opening ${say.fine(each.openingMm)}`,
                ...figuresOf(each, say)
              ].join(' · ')}
            </div>
          </li>
        ))}
      </ol>
      <dl className="fill-figures">
        {heightsOf(seat, nameOf, say).map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd className="figure">{value}</dd>
          </div>
        ))}
      </dl>
      <p className="quiet small">Heights are above the channel’s inside floor.</p>
    </section>
  )
}

const figuresOf = (each: Interface, say: Say): readonly string[] => [
  ...(each.landMm === null ? [] : [`land ${say.fine(each.landMm)}`]),
  ...(each.playMm === null ? [] : [`play ${say.fine(each.playMm)}`]),
  ...(each.pressMm === null || each.pressMm === 0 ? [] : [`pressed ${say.fine(each.pressMm)}`]),
  `stands proud ${say.fine(each.proudMm)}`,
  each.held ? 'holds when turned over' : 'lifts out',
  ...(each.located ? [] : ['not located'])
]

const heightsOf = (
  seat: SeatFit,
  nameOf: (partId: string) => string,
  say: Say
): readonly (readonly [string, string])[] => [
  ['Top of the stack', say.fine(seat.topMm)],
  ['Underside of the cup', say.fine(seat.undersideMm)],
  [`Lowest part, ${nameOf(seat.lowestPartId)}`, say.fine(seat.lowestMm)],
  ['Clear of the floor', say.fine(seat.floorClearanceMm)],
  ['Filled above the face it', seat.seals ? 'seals' : 'leaks']
]
