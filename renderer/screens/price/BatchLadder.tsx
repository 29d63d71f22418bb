import { editPricing } from '../../../shared-model/design'
import { LADDER_SIZES } from '../../../shared-model/pricing'
import { EntryField } from '../../fields/EntryField'
import { useApp } from '../../store/use-app'
import { useEdit } from '../../store/use-edit'
import { LadderChart } from './LadderChart'
import { LadderTable } from './LadderTable'
import { readSizes } from './read-sizes'
import { useLadder } from './use-ladder'

/** What one costs in batches of several sizes, each re-solved from its bars to its price. */
export function BatchLadder() {
  const listed = useApp((state) => state.workshop.pricing.ladder)
  const edit = useEdit()
  const sizes = listed.length === 0 ? LADDER_SIZES : listed
  const ladder = useLadder(sizes)
  const { steps } = ladder
  return (
    <section className="part" aria-label="Batch sizes">
      <div className="part-head">
        <h2>Batch sizes side by side</h2>
        {ladder.working ? (
          <div className="progress" role="status">
            <progress aria-label="Batch sizes worked out" value={ladder.known} max={sizes.length} />
            <span>
              {ladder.known} of {sizes.length}
            </span>
            <button type="button" className="button" onClick={ladder.stop}>
              Stop the batch sizes
            </button>
          </div>
        ) : ladder.stopped || ladder.failed !== null ? (
          <div className="progress" role="status">
            <span>{ladder.failed === null ? 'Stopped before the last size.' : `It failed: ${ladder.failed}.`}</span>
            <button type="button" className="button" onClick={ladder.again}>
              Work the batch sizes out
            </button>
          </div>
        ) : null}
      </div>
      <p className="quiet small">
        For each size the cuts, packs, tool changes and times are worked out anew. Each row names the bars and packs
        that it opens beyond those of the size before.
      </p>
      <EntryField
        label="Sizes to compare"
        path="pricing.ladder"
        value={sizes}
        show={(value) => value.join(', ')}
        read={readSizes}
        hint="Whole numbers, a comma or a space between them"
        commit={(value) => edit.workshop('change the batch sizes', (before) => editPricing(before, { ladder: value }))}
      />
      {steps.length === 0 ? null : (
        <>
          <LadderChart steps={steps} sizes={sizes} />
          <LadderTable steps={steps} />
        </>
      )}
    </section>
  )
}
