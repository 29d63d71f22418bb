import { clearBench } from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'
import { useServices } from '../../documents/use-documents'
import { Icon } from '../../icons/Icon'
import { PrintLabels } from '../../paper-view/PrintLabels'
import { usePlanState } from '../../plan/use-plan'
import { useApp, useAppStore } from '../../store/use-app'
import { useSay } from '../../store/use-say'
import { afterBuilt, builtOf } from './built'

/** After the last cut: what was used comes off the shelves, what is left goes on, and labels for it. */
export function MarkBuilt() {
  const of = usePlanState((state) => state.fullOf)
  const stale = usePlanState((state) => state.stale)
  const store = useAppStore()
  const readOnly = useApp((state) => state.files.readOnly || state.files.workshopReadOnly)
  const { documents } = useServices()
  const say = useSay()
  if (of === null || of.plan.cuts.length === 0) return null
  const { plan, design, workshop } = of
  const { bars, sheets } = builtOf(plan, design, workshop)
  const over = plan.bill.lines.filter(({ need, left }) => need !== 'stock' && need !== 'sheet' && left > 0)
  const bought = bars.bars.reduce((sum, { count }) => sum + count, 0)
  const mark = async (): Promise<void> => {
    const said = await documents.keep('mark as built', (pair) => {
      const after = afterBuilt(plan, design, pair.workshop)
      if (!after.ok) return after
      const cleared = clearBench(pair.design)
      return cleared.ok ? ok({ design: cleared.value, workshop: after.value }) : cleared
    })
    store.do.look({
      notice: {
        text:
          said ??
          `Marked as built: ${bars.used.length} off the rack, ${bars.added.length} on it. Undo brings it all back.`
      }
    })
  }
  return (
    <section className="part" aria-label="When it is built">
      <div className="part-head">
        <h2>When it is built</h2>
        <div className="button-row">
          <PrintLabels
            offcuts={workshop.rack.filter(({ cameFrom }) => cameFrom === design.title)}
            label="Print labels for its offcuts"
          />
          <button type="button" className="button" disabled={stale || readOnly} onClick={() => void mark()}>
            <Icon name="good" />
            Mark as built
          </button>
        </div>
      </div>
      <p>
        {bought === 0 ? 'No new bar is taken' : bought === 1 ? 'One new bar is taken' : `${bought} new bars are taken`};{' '}
        {bars.used.length === 0 ? 'nothing comes off the rack' : `off the rack: ${lengths(bars.used, say.length)}`};{' '}
        {bars.added.length === 0 ? 'nothing goes on it' : `on it: ${lengths(bars.added, say.length)}`}.
        {sheets.length === 0 ? '' : ` Sheets cut into: ${sheets.length}; what is left of them is kept as offcuts.`}
        {over.length === 0
          ? ''
          : ` What packs leave over goes on the shelf for the next batch: ${over.map(({ name }) => name).join(', ')}.`}
      </p>
      {readOnly ? (
        <p>
          This is open for reading only: a newer version of the program wrote it, and what is not shown may need other
          bars. The rack stays as it is.
        </p>
      ) : null}
      <p className="quiet small">
        Offcuts are kept in the workshop with the day{design.title === '' ? '' : ` and “${design.title}”`}. One step
        back undoes it.
      </p>
    </section>
  )
}

const lengths = (offcuts: readonly { readonly lengthMm: number }[], say: (lengthMm: number) => string): string =>
  offcuts.map(({ lengthMm }) => say(lengthMm)).join(', ')
