import { addWay } from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'
import { Icon } from '../../icons/Icon'
import { useHasChannels } from '../../paper-view/use-sheet'
import { useFullPlan } from '../../plan/use-plan'
import { useEdit } from '../../store/use-edit'
import { Empty } from '../Empty'
import { MissingPrices } from '../materials/MissingPrices'
import { Page } from '../Page'
import { Working } from '../Working'
import { BatchHead } from './BatchHead'
import { BatchLadder } from './BatchLadder'
import { CostBreakdown } from './CostBreakdown'
import { CostDetail } from './CostDetail'
import { NoPrice } from './NoPrice'
import { PricingFields } from './PricingFields'
import { QuotePart } from './QuotePart'
import { Sensitivities } from './Sensitivities'
import { WaysFields } from './WaysFields'
import { WaysTable } from './WaysTable'

/** What one costs, what to ask for it, and what is kept. */
export default function PriceScreen() {
  const has = useHasChannels()
  const edit = useEdit()
  const { plan, stale } = useFullPlan()
  return (
    <Page
      title="Price"
      says="What one costs, what to ask in each way of selling, what is kept, and how many must be sold."
      action={
        <button
          type="button"
          className="button primary"
          onClick={() =>
            edit.workshop('add a way of selling', (workshop) => ok(addWay(workshop, 'New way of selling')))
          }
        >
          <Icon name="plus" />
          Add a way of selling
        </button>
      }
    >
      <Working />
      {has ? null : <Empty says="There is nothing to price yet. Put a channel on the sill first." />}
      <BatchHead plan={has ? plan : null} stale={stale} />
      {plan === null || !has ? null : (
        <div className={stale ? 'page-parts stale' : 'page-parts'}>
          <MissingPrices missing={plan.bill.missing} />
          <NoPrice problems={plan.problems} />
          <div className="price-parts">
            <WaysTable pricing={plan.pricing} />
            <div className="page-parts">
              <CostBreakdown plan={plan} />
              <Sensitivities pricing={plan.pricing} />
            </div>
          </div>
          {plan.pricing.cost === null ? null : <CostDetail plan={plan} cost={plan.pricing.cost} />}
        </div>
      )}
      {has ? <BatchLadder /> : null}
      {has ? <QuotePart /> : null}
      <WaysFields />
      <PricingFields />
    </Page>
  )
}
