import { useState } from 'react'
import { ChoiceField } from '../../fields/ChoiceField'
import { Icon } from '../../icons/Icon'
import { smallSheet } from '../../paper-view/small-sheet'
import { usePrintSmall } from '../../paper-view/use-print-small'
import { usePlanState } from '../../plan/use-plan'
import { problemText } from '../../plan/wording'
import { useSay } from '../../store/use-say'
import { quoteBlocks, quoteOf } from './quote-page'

/** One page for a buyer: what, how many, the price and when it is ready. */
export function QuotePart() {
  const of = usePlanState((state) => state.fullOf)
  const stale = usePlanState((state) => state.stale)
  const say = useSay()
  const print = usePrintSmall()
  const [chosen, setChosen] = useState('')
  const ways = of?.plan.pricing.ways ?? []
  const way = ways.find(({ wayId }) => wayId === chosen) ?? ways[0]
  if (of === null || way === undefined) return null
  const made = quoteOf(of.plan, of.design, of.workshop, way.wayId)
  const ready = made.ok ? made.value : null
  const write = (): void => {
    if (ready === null) return
    const sheet = smallSheet(of, 'Quote', quoteBlocks(ready, of.design, of.plan.on, say))
    // A quote has no lengths, so its foot names no unit of them.
    void print('quote', { ...sheet, titleBlock: { ...sheet.titleBlock, units: '', graduation: '' } })
  }
  return (
    <section className="part" aria-label="Quote for a buyer">
      <div className="part-head">
        <h2>Quote for a buyer</h2>
        <button type="button" className="button" disabled={ready === null || stale} onClick={write}>
          <Icon name="print" />
          Print the quote
        </button>
      </div>
      <div className="fields">
        <ChoiceField
          label="Sold by"
          value={way.wayId}
          choices={ways.map(({ wayId, name }) => ({ value: wayId, label: name }))}
          commit={setChosen}
        />
      </div>
      {made.ok ? null : (
        <p className="error" role="alert">
          {problemText(made.problem, of.workshop.shows)}
        </p>
      )}
      {ready === null ? null : (
        <p>
          {of.plan.quantity} × {of.design.title}: {say.money(ready.totalMinor)} to pay, ready in{' '}
          {ready.leadDays === 1 ? 'one day' : `${ready.leadDays} days`}. Nothing of your costs is on it.
        </p>
      )}
    </section>
  )
}
