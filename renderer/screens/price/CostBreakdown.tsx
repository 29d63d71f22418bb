import type { Plan } from '../../../shared-model/plan'
import type { CostParts } from '../../../shared-model/pricing'
import { useSay } from '../../store/use-say'

const PARTS: readonly { readonly key: keyof CostParts; readonly name: string }[] = [
  { key: 'materialMinor', name: 'Material' },
  { key: 'labourMinor', name: 'Labour' },
  { key: 'toolWearMinor', name: 'Tool wear' },
  { key: 'overheadMinor', name: 'Overhead' },
  { key: 'scrapMinor', name: 'Scrap' },
  { key: 'packRestMinor', name: 'Rest of packs' }
]

/** What one unit costs, by cause; the parts add up to the whole. */
export function CostBreakdown({ plan }: { readonly plan: Plan }) {
  const say = useSay()
  const { bill } = plan
  const { cost } = plan.pricing
  return (
    <section className="part" aria-label="Cost of one">
      <div className="part-head">
        <h2>Cost of one</h2>
        <strong className="figure">{cost === null ? 'not known' : say.money(cost.totalMinor)}</strong>
      </div>
      {cost === null ? (
        <p className="quiet">There is no cost yet, for the reason above; nothing is counted as nought.</p>
      ) : (
        <>
          {PARTS.map(({ key, name }) => (
            <div className="cost-bar" key={key}>
              <span>{name}</span>
              <svg viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
                <rect className="pen-bar" x="0" y="1" height="6" width={shareOf(cost[key], cost.totalMinor)} />
              </svg>
              <span className="cost-figure">{say.money(cost[key])}</span>
            </div>
          ))}
          {bill.restMinor === null || bill.restMinor === 0 ? null : (
            <p className="small">
              Beside it, unused: {say.money(bill.restMinor)} of packs, offcuts and pieces of sheet is left over
              {cost.packRestMinor > 0 ? '; what is left of packs is charged to the batch.' : ' and not in the cost.'}
            </p>
          )}
        </>
      )}
    </section>
  )
}

const shareOf = (part: number, whole: number): number =>
  whole > 0 ? Math.max(0, Math.min(100, (part / whole) * 100)) : 0
