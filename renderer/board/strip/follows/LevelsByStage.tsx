import type { ChannelPlan } from '../../../../shared-model/plan'
import type { Rung } from '../../../../shared-model/reservoir'
import { type Say, STAGE_NAMES } from '../../../../shared-model/words'
import { useOffered } from '../../../catalogue/use-offered'
import { useApp } from '../../../store/use-app'
import { useSay } from '../../../store/use-say'
import { StripPart } from '../StripPart'

/** For each stage the highest safe line, its litres and gap; under it how a riser would give the gap at the fill line. */
export function LevelsByStage({ part }: { readonly part: ChannelPlan }) {
  const say = useSay()
  const stage = useApp((state) => state.design.water.stage)
  const cups = useOffered().cups
  const cupName = (id: string): string => cups.find((cup) => cup.id === id)?.name ?? id
  const { stages, ladder } = part.water
  if (stages.length === 0) return null
  return (
    <StripPart title="Levels by stage">
      <div className="table-holder">
        <table className="list close">
          <caption className="hidden-text">Highest safe fill line for each stage</caption>
          <thead>
            <tr>
              <th scope="col">Stage</th>
              <th scope="col" className="number">
                Fill to
              </th>
              <th scope="col" className="number">
                Holds
              </th>
              <th scope="col" className="number">
                Air gap
              </th>
            </tr>
          </thead>
          <tbody>
            {stages.map((each) => (
              <tr key={each.stage} aria-current={each.stage === stage ? 'true' : undefined}>
                <th scope="row">{STAGE_NAMES[each.stage]}</th>
                {each.reachable ? (
                  <>
                    <td className="number">
                      {say.share(each.safeFillShare)}
                      <div className="quiet small">{say.length(each.safeLevelMm)} up</div>
                    </td>
                    <td className="number">{say.volume(each.litres)}</td>
                    <td className="number">
                      {gapSaid(each.gapMm, say)}
                      <div className="quiet small">{each.wetted ? 'cup wetted' : 'cup dry'}</div>
                    </td>
                  </>
                ) : (
                  <td className="quiet small" colSpan={3}>
                    A gap of {say.length(each.wantedGapMm)} is not reached with these cups.
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <h3>Riser ladder</h3>
      <p className="quiet small">
        What lifts the plant’s cup far enough at the fill line of {say.share(part.water.fillShare)}.
      </p>
      <dl className="fill-figures">
        {ladder.map((rung) => (
          <div key={rung.stage}>
            <dt>{STAGE_NAMES[rung.stage]}</dt>
            <dd>{rungSaid(rung, cupName, say)}</dd>
          </div>
        ))}
      </dl>
    </StripPart>
  )
}

const gapSaid = (gapMm: number, say: Say): string => (gapMm < 0 ? `${say.length(-gapMm)} deep` : say.length(gapMm))

function rungSaid({ liftMm, how }: Rung, cupName: (id: string) => string, say: Say): string {
  const lift = `lift ${say.fine(liftMm)}`
  switch (how.kind) {
    case 'none-needed':
      return 'no riser needed'
    case 'riser':
      return `${lift}: riser from ${cupName(how.cupId)}, cut ${say.fine(how.cutBelowRimMm)} below its rim`
    case 'other-saw':
      return `${lift}: no cut gives it in this hole; ${cupName(how.cupId)} does in a hole of ${say.fine(how.openingMm)}`
    case 'no-cup-reaches':
      return `${lift}: no cup on hand reaches; the most is ${say.fine(how.mostMm)}`
  }
}
