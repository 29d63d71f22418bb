import type { Bill } from '../../../shared-model/bill'
import { useSay } from '../../store/use-say'

interface Buy {
  readonly key: string
  readonly name: string
  readonly packs: number
  readonly eachMinor: number
  readonly totalMinor: number
  readonly pricedOn: string
}

/** Whole packs to buy, by supplier. */
export function ShoppingList({ bill }: { readonly bill: Bill }) {
  const say = useSay()
  const suppliers = bySupplier(bill)
  if (suppliers.length === 0) return null
  return (
    <section className="part" aria-label="Shopping list by supplier">
      <div className="part-head">
        <h2>Shopping list by supplier</h2>
        <strong>
          {bill.totalMinor === null ? 'Total unknown: prices missing' : `Total ${say.money(bill.totalMinor)}`}
        </strong>
      </div>
      {suppliers.map(([supplier, buys]) => (
        <div className="table-holder" key={supplier}>
          <table className="list">
            <caption>{supplier === '' ? 'Supplier not named' : supplier}</caption>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col" className="number">
                  How many
                </th>
                <th scope="col" className="number">
                  Each
                </th>
                <th scope="col" className="number">
                  Together
                </th>
                <th scope="col">Price of</th>
              </tr>
            </thead>
            <tbody>
              {buys.map((buy) => (
                <tr key={buy.key}>
                  <th scope="row">{buy.name}</th>
                  <td className="number">{buy.packs}</td>
                  <td className="number">{say.money(buy.eachMinor)}</td>
                  <td className="number">{say.money(buy.totalMinor)}</td>
                  <td>{buy.pricedOn === '' ? 'not known' : buy.pricedOn}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      ))}
    </section>
  )
}

function bySupplier(bill: Bill): readonly (readonly [string, readonly Buy[]])[] {
  const lists = new Map<string, Buy[]>()
  for (const line of bill.lines) {
    for (const pack of line.packs) {
      const list = lists.get(pack.supplier) ?? []
      list.push({ ...pack, key: `${line.id}-${pack.offerId}`, name: pack.name === '' ? line.name : pack.name })
      lists.set(pack.supplier, list)
    }
  }
  return [...lists].sort(([a], [b]) => (a < b ? -1 : 1))
}
