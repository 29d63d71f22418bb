import type { PricePlan, Sensitivity } from '../../../shared-model/pricing'
import { SENSITIVITY_NAMES } from '../../../shared-model/words'
import { useSay } from '../../store/use-say'

const more = (by: Sensitivity['by'], currency: string): string =>
  ({
    'currency-unit': `1\u00a0${currency}\u00a0more`,
    'percentage-point': 'one percentage point more',
    minute: 'one minute more for each'
  })[by]

/** What a little more of each input does to the batch's profit, largest first. */
export function Sensitivities({ pricing }: { readonly pricing: PricePlan }) {
  const say = useSay()
  const largest = Math.max(1, ...pricing.sensitivity.map((each) => Math.abs(each.changeMinor)))
  if (pricing.sensitivity.length === 0) return null
  return (
    <section className="part" aria-label="What moves the profit">
      <h2>What moves the profit of the batch</h2>
      {pricing.sensitivity.map((each) => {
        const width = (Math.abs(each.changeMinor) / largest) * 50
        return (
          <div className="cost-bar" key={each.input}>
            <span>
              {SENSITIVITY_NAMES[each.input]}
              <span className="quiet small"> {more(each.by, pricing.currency)}</span>
            </span>
            <svg viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
              <rect className="pen-bar" x={each.changeMinor < 0 ? 50 - width : 50} y="1" height="6" width={width} />
              <line className="pen-thin" x1="50" x2="50" y1="0" y2="8" />
            </svg>
            <span className="cost-figure">{say.money(each.changeMinor)}</span>
          </div>
        )
      })}
    </section>
  )
}
