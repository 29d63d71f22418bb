import type { PackOffer } from '../../../shared-model/bill'
import { Icon } from '../../icons/Icon'

/** Below a price that is in another currency than the workshop's: which, and the way to count it as the workshop's own. */
export function ForeignPrice(of: {
  readonly offer: PackOffer
  readonly own: string
  readonly countAsOwn: (offer: PackOffer) => unknown
}) {
  const { offer, own, countAsOwn } = of
  if (offer.currency === undefined || offer.currency === own) return null
  return (
    <span className="button-row">
      <span className="tag stop">
        <Icon name="stop" />
        {`in ${offer.currency}`}
      </span>
      <button
        type="button"
        className="button"
        aria-label={`Count the price of ${offer.name} as ${own}`}
        onClick={() => countAsOwn(offer)}
      >
        Count as {own}
      </button>
    </span>
  )
}
