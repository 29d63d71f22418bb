import type { Plan } from '../../shared-model/plan'
import { grams, litres, showMass, showMoney, showVolume } from '../../shared-model/units'
import { useFullPlan } from '../plan/use-plan'
import { useApp } from '../store/use-app'

/** The figures that follow the hand: plants, litres, weight, bars, cost. */
export function Totals({ plan }: { readonly plan: Plan }) {
  const shows = useApp((state) => state.workshop.shows)
  const { plan: full, stale } = useFullPlan()
  const bars = full?.cuts.reduce((sum, cut) => sum + cut.bars.length, 0)
  const cost = full?.pricing.cost
  const behind = stale ? 'stale' : undefined
  return (
    <dl className="totals" aria-label="Totals">
      <div>
        <dt>Plants</dt>
        <dd>{plan.totals.plants}</dd>
      </div>
      <div>
        <dt>Solution</dt>
        <dd className="figure">{showVolume(litres(plan.totals.litres), shows)}</dd>
      </div>
      <div>
        <dt>Filled</dt>
        <dd className="figure">{showMass(grams(plan.load.filledG), shows)}</dd>
      </div>
      <div className={behind}>
        <dt>Bars</dt>
        <dd>{bars ?? '…'}</dd>
      </div>
      <div className={behind}>
        <dt>Cost of one</dt>
        <dd className="figure">
          {full === null
            ? '…'
            : cost === null || cost === undefined
              ? full.bill.missing.length > 0
                ? 'prices missing'
                : 'not known'
              : showMoney(cost.totalMinor, full.pricing.currency, shows.decimalMark)}
        </dd>
      </div>
    </dl>
  )
}
