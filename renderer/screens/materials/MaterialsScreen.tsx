import { useHasChannels } from '../../paper-view/use-sheet'
import { useFullPlan } from '../../plan/use-plan'
import { Empty } from '../Empty'
import { Page } from '../Page'
import { PrintParts } from '../PrintParts'
import { NoPrice } from '../price/NoPrice'
import { SheetParts } from '../SheetParts'
import { Working } from '../Working'
import { MissingPrices } from './MissingPrices'
import { ShoppingList } from './ShoppingList'

/** What the batch needs and what to buy for it. */
export default function MaterialsScreen() {
  const has = useHasChannels()
  const { plan, stale } = useFullPlan()
  return (
    <Page
      title="Materials"
      says="What the batch needs, in whole packs and whole bars, and what is left over."
      action={has ? <PrintParts label="Print the shopping list" parts={['materials']} /> : null}
    >
      <Working />
      {has ? (
        <>
          {plan === null ? null : (
            <div className={stale ? 'stale' : undefined}>
              <NoPrice problems={plan.problems} />
              <MissingPrices missing={plan.bill.missing} />
              <ShoppingList bill={plan.bill} />
            </div>
          )}
          <SheetParts
            parts={['materials', 'first-fill']}
            without={['shopping', 'prices', 'Cost of one unit', 'Cost']}
          />
        </>
      ) : (
        <Empty says="There is nothing to buy yet. Put a channel on the sill first." />
      )}
    </Page>
  )
}
