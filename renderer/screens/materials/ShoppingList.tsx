import { type Bill, shoppingList } from '../../../shared-model/bill'
import { useSay } from '../../store/use-say'
import { WriteShopping } from './WriteShopping'

/** Whole packs to buy, by supplier, in one table so that their columns stand below each other. */
export function ShoppingList({ bill }: { readonly bill: Bill }) {
  const say = useSay()
  const lists = shoppingList(bill)
  if (lists.length === 0) return null
  return (
    <section className="part" aria-label="Shopping list by supplier">
      <div className="part-head">
        <h2>Shopping list by supplier</h2>
        <WriteShopping />
      </div>
      <div className="table-holder">
        <table className="list" aria-label="Shopping list by supplier">
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
          {lists.map(({ supplier, rows, totalMinor }) => (
            <tbody key={supplier}>
              <tr>
                <th scope="rowgroup" colSpan={3} className="group-head">
                  {supplier === '' ? 'Supplier not named' : supplier}
                </th>
                <td className="number group-head">{say.money(totalMinor)}</td>
                <td className="group-head" />
              </tr>
              {rows.map((row) => (
                <tr key={`${row.need} ${row.partId} ${row.name} ${row.packSize}`}>
                  <th scope="row">
                    <bdi>{row.name}</bdi>
                    {row.need === 'stock' ? `, ${say.length(row.packSize)}` : ''}
                  </th>
                  <td className="number">{row.packs}</td>
                  <td className="number">{say.money(row.eachMinor)}</td>
                  <td className="number">{say.money(row.totalMinor)}</td>
                  <td>{row.pricedOn === '' ? 'not known' : row.pricedOn}</td>
                </tr>
              ))}
            </tbody>
          ))}
          <tfoot>
            <tr>
              <th scope="row" colSpan={3}>
                {bill.totalMinor === null ? 'Together, without what has no price' : 'Together'}
              </th>
              <td className="number">{say.money(lists.reduce((sum, { totalMinor }) => sum + totalMinor, 0))}</td>
              <td />
            </tr>
          </tfoot>
        </table>
      </div>
    </section>
  )
}
