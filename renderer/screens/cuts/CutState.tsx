import type { CutPlan } from '../../../shared-model/cutting'
import { Icon } from '../../icons/Icon'
import { usePlanState, usePlanStore } from '../../plan/use-plan'
import { useApp } from '../../store/use-app'
import { useSay } from '../../store/use-say'
import { BarsAtBench } from './BarsAtBench'
import { proofState } from './proof-words'

/** One profile's bars: cost, waste, whether the plan is proven least, and the bars with what is done of them. */
export function CutState({ cut }: { readonly cut: CutPlan }) {
  const say = useSay()
  const name = useApp(
    (state) => state.design.parts.profiles.find((each) => each.id === cut.profileId)?.name ?? cut.profileId
  )
  const stale = usePlanState((state) => state.stale)
  const working = usePlanState((state) => state.working)
  const proving = usePlanState((state) => state.proving)
  const { cancel, searchLonger } = usePlanStore()
  const progress = usePlanState((state) => state.progress[cut.profileId])
  const { proven, words } = proofState(cut, progress, proving || (working && !stale), say.money)
  return (
    <section className={stale ? 'part stale' : 'part'} aria-label={`Bars of ${name}`}>
      <div className="part-head">
        <h2>{name}</h2>
        <div className="button-row">
          <span className={proven && !stale ? 'tag good' : 'tag note'} role="status">
            <Icon name={proven && !stale ? 'good' : 'note'} />
            {stale ? 'From before the last change' : words}
          </span>
          {proven || stale ? null : proving !== null ? (
            <button type="button" className="button" onClick={cancel}>
              Stop the search
            </button>
          ) : working ? null : (
            <button type="button" className="button" onClick={searchLonger}>
              Search longer
            </button>
          )}
        </div>
      </div>
      <dl className="figures">
        <Figure name="Bars" value={`${cut.bars.length}`} />
        <Figure name="Stock cost" value={cut.costMinor === null ? 'price missing' : say.money(cut.costMinor)} />
        <Figure name="Bought" value={say.length(cut.boughtMm)} />
        <Figure name="Kept as offcuts" value={say.length(cut.keptMm)} />
        <Figure name="Waste" value={say.length(cut.wasteMm)} />
        <Figure name="Stop settings" value={`${cut.stopSettingsMm.length}`} />
      </dl>
      <BarsAtBench cut={cut} />
    </section>
  )
}

function Figure({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  )
}
