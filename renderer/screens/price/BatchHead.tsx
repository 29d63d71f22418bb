import { setDesignField } from '../../../shared-model/design'
import type { Plan } from '../../../shared-model/plan'
import { NumberField } from '../../fields/NumberField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { useSay } from '../../store/use-say'

/** How many are made at once, and what that comes to. */
export function BatchHead({ plan, stale }: { readonly plan: Plan | null; readonly stale: boolean }) {
  const quantity = useApp((state) => state.design.quantity)
  const edit = useEdit()
  return (
    <section className="part batch-head" aria-label="Batch">
      <NumberField
        label="How many to make at once"
        whole
        live
        least={1}
        value={quantity}
        path="quantity"
        commit={(value) => edit.design('change how many', (design) => setDesignField(design, 'quantity', value))}
      />
      {plan === null ? null : <BatchFigures plan={plan} stale={stale} />}
    </section>
  )
}

function BatchFigures({ plan: { pricing, bench, bill }, stale }: { readonly plan: Plan; readonly stale: boolean }) {
  const say = useSay()
  const { cost } = pricing
  return (
    <dl className={stale ? 'figures stale' : 'figures'}>
      <div>
        <dt>Cost of one</dt>
        <dd>{cost === null ? 'not known' : say.money(cost.totalMinor)}</dd>
      </div>
      <div>
        <dt>The batch costs</dt>
        <dd>{cost === null ? 'not known' : say.money(cost.batchMinor)}</dd>
      </div>
      <div>
        <dt>To buy for it</dt>
        <dd>{bill.totalMinor === null ? 'not known' : say.money(bill.totalMinor)}</dd>
      </div>
      <div>
        <dt>Worked time of the batch</dt>
        <dd>{say.time(cost?.workedS ?? bench.workedS)}</dd>
      </div>
    </dl>
  )
}
