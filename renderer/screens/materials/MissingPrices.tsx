import type { Bill } from '../../../shared-model/bill'
import { NEED_NAMES } from '../../../shared-model/words'
import { Icon } from '../../icons/Icon'
import { useActions } from '../../store/use-app'

/** What has no price yet; the way to enter it. */
export function MissingPrices({ missing }: { readonly missing: Bill['missing'] }) {
  const { look } = useActions()
  if (missing.length === 0) return null
  return (
    <section className="part" aria-label="Prices missing">
      <div className="part-head">
        <h2>
          <span className="tag stop">
            <Icon name="stop" />
            {missing.length} without a price
          </span>
        </h2>
        <button type="button" className="button" onClick={() => look({ screen: 'workshop' })}>
          Enter prices in the workshop
        </button>
      </div>
      <ul className="bare-list">
        {missing.map((each) => (
          <li key={`${each.need}-${each.partId}`}>
            {NEED_NAMES[each.need] === each.name ? each.name : `${NEED_NAMES[each.need]}: ${each.name}`}
          </li>
        ))}
      </ul>
    </section>
  )
}
