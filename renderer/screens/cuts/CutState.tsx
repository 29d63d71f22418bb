import type { CutPlan } from '../../../shared-model/cutting'
import { Icon } from '../../icons/Icon'
import { usePlanState } from '../../plan/use-plan'
import { useApp } from '../../store/use-app'
import { useSay } from '../../store/use-say'

/** One profile's bars: cost, waste, and whether the plan is proven least. */
export function CutState({ cut }: { readonly cut: CutPlan }) {
  const say = useSay()
  const name = useApp(
    (state) => state.design.parts.profiles.find((each) => each.id === cut.profileId)?.name ?? cut.profileId
  )
  const stale = usePlanState((state) => state.stale)
  return (
    <section className={stale ? 'part stale' : 'part'} aria-label={`Bars of ${name}`}>
      <div className="part-head">
        <h2>{name}</h2>
        {cut.proven ? (
          <span className="tag good">
            <Icon name="good" />
            Proven least
          </span>
        ) : (
          <span className="tag note">
            <Icon name="note" />
            {gapText(cut)}
          </span>
        )}
      </div>
      <dl className="figures">
        <Figure name="Bars" value={`${cut.bars.length}`} />
        <Figure name="Stock cost" value={cut.costMinor === null ? 'price missing' : say.money(cut.costMinor)} />
        <Figure name="Bought" value={say.length(cut.boughtMm)} />
        <Figure name="Kept as offcuts" value={say.length(cut.keptMm)} />
        <Figure name="Waste" value={say.length(cut.wasteMm)} />
        <Figure name="Stop settings" value={`${cut.stopSettingsMm.length}`} />
      </dl>
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

/** How far from the least it can be, as the bound says. */
const gapText = (cut: CutPlan): string =>
  cut.value > 0
    ? `At most ${(((cut.value - cut.lowerBound) / cut.value) * 100).toFixed(1)} % above the least possible`
    : 'Not proven yet'
