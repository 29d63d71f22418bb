import type { PricePlan, WayPrice } from '../../../shared-model/pricing'
import type { Say } from '../../../shared-model/words'
import { useSay } from '../../store/use-say'
import { Crossings } from './Crossings'

interface Row {
  readonly name: string
  readonly of: (way: WayPrice, say: Say) => string
  /** What the grower came for. */
  readonly main?: true
}

const GROUPS: readonly { readonly name: string; readonly rows: readonly Row[] }[] = [
  {
    name: 'What the buyer pays',
    rows: [
      { name: 'Price the buyer sees', of: (way, say) => say.money(way.shownMinor), main: true },
      { name: 'Price before tax', of: (way, say) => say.money(way.priceMinor) },
      { name: 'Tax, not yours', of: (way, say) => say.money(way.taxMinor) }
    ]
  },
  {
    name: 'What you keep',
    rows: [
      { name: 'Fees', of: (way, say) => say.money(way.feesMinor) },
      { name: 'Your time to post', of: (way, say) => say.money(way.postingMinor) },
      { name: 'Profit on one', of: (way, say) => say.money(way.profitMinor), main: true },
      { name: 'Profit of the batch', of: (way, say) => say.money(way.batchProfitMinor) },
      { name: 'Margin: profit ÷ price', of: (way, say) => say.share(way.marginShare) },
      {
        name: 'Markup: profit ÷ cost',
        of: (way, say) => (way.markupShare === null ? 'none' : say.share(way.markupShare))
      },
      {
        name: 'Profit per hour',
        of: (way, say) => (way.profitPerHourMinor === null ? 'none' : say.money(way.profitPerHourMinor))
      },
      {
        name: 'You earn per hour',
        of: (way, say) => (way.earningPerHourMinor === null ? 'none' : say.money(way.earningPerHourMinor))
      }
    ]
  },
  {
    name: 'How many must be sold',
    rows: [
      { name: 'Fixed cost: fee and tools', of: (way, say) => say.money(way.fixedMinor) },
      { name: 'One brings towards it', of: (way, say) => say.money(way.contributionMinor) },
      { name: 'Units that pay the fee', of: (way) => units(way.feeBreakEvenUnits) },
      { name: 'Units that pay fee and tools', of: (way) => units(way.breakEvenUnits), main: true },
      { name: 'Into profit, batch by batch', of: (way) => crossed(way) },
      {
        name: 'Margin of safety',
        of: (way, say) =>
          way.safetyShare === null || way.safetyShare < 0 ? 'none: too few made' : say.share(way.safetyShare)
      }
    ]
  }
]

const units = (count: number | null): string => (count === null ? 'never at this price' : `${count}`)

const crossed = ({ crossings }: WayPrice): string => {
  const [first, ...more] = crossings.filter(({ direction }) => direction === 'into-profit')
  if (first === undefined) return 'not within 10,000'
  return more.length === 0 ? `at ${first.units}` : `first at ${first.units}`
}

/** Ways of selling side by side. */
export function WaysTable({ pricing }: { readonly pricing: PricePlan }) {
  const say = useSay()
  if (pricing.ways.length === 0) {
    return (
      <section className="part" aria-label="Ways of selling side by side">
        <h2>Ways of selling side by side</h2>
        <p className="quiet">
          Nothing to compare yet. Enter what is missing above, then add a way of selling: a stall, a shop, parcels.
        </p>
      </section>
    )
  }
  return (
    <section className="part" aria-label="Ways of selling side by side">
      <div className="table-holder">
        <table className="list">
          <caption>Ways of selling side by side</caption>
          <thead>
            <tr>
              <th scope="col">For one, if not said otherwise</th>
              {pricing.ways.map((way) => (
                <th key={way.wayId} scope="col" className="number">
                  {way.name}
                </th>
              ))}
            </tr>
          </thead>
          {GROUPS.map((group) => (
            <tbody key={group.name}>
              <tr>
                <th scope="rowgroup" colSpan={pricing.ways.length + 1} className="group-head">
                  {group.name}
                </th>
              </tr>
              {group.rows.map((row) => (
                <tr key={row.name} className={row.main ? 'main-row' : undefined}>
                  <th scope="row">{row.name}</th>
                  {pricing.ways.map((way) => (
                    <td key={way.wayId} className="number">
                      {row.of(way, say)}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          ))}
        </table>
      </div>
      <p className="quiet small">
        Fixed cost is the fee for the batch, and the tools that it uses at what they cost less what they still bring.
        One brings towards it its profit, with the wear of the tools put back; towards the fee alone, its profit. Batch
        by batch: each batch and its fee are paid in full before its first one is sold, the tools once.
      </p>
      <Crossings ways={pricing.ways} />
    </section>
  )
}
