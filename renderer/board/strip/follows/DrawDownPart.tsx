import type { ChannelPlan } from '../../../../shared-model/plan'
import type { DrawDown } from '../../../../shared-model/reservoir'
import { FigureLine } from '../../../drawing/FigureLine'
import { useSay } from '../../../store/use-say'
import { StripPart } from '../StripPart'
import { DrawDownCurve } from './DrawDownCurve'

/** More rows than this are told with days left out; the first, the refill and the end level always stand. */
const MOST_ROWS = 14

/** How the level sinks by day, as a curve and a table, with the day of the refill and of the end level. */
export function DrawDownPart({ part }: { readonly part: ChannelPlan }) {
  const say = useSay()
  const { drawDown, litresPerPlant, levelMm, endLevelMm, insideHeightMm } = part.water
  if (drawDown === null)
    return (
      <StripPart title="Draw-down">
        <p className="quiet small">
          No crop here with a known daily use, or nothing filled. Enter a crop’s own daily use under Crops.
        </p>
      </StripPart>
    )
  const day = (value: number | null): string =>
    value === null ? `after day ${drawDown.days.length - 1}` : `day ${value}`
  return (
    <StripPart title="Draw-down">
      <dl className="fill-figures">
        <FigureLine name="Daily use" value={say.volume(drawDown.dailyMl / 1000)} />
        {litresPerPlant === null ? null : <FigureLine name="For each plant" value={say.volume(litresPerPlant)} />}
        <FigureLine name="Next refill" value={day(drawDown.refillDay)} />
        <FigureLine name="End level reached" value={day(drawDown.endDay)} />
      </dl>
      <DrawDownCurve drawDown={drawDown} levelMm={levelMm} endLevelMm={endLevelMm} insideHeightMm={insideHeightMm} />
      <div className="table-holder">
        <table className="list close">
          <caption className="hidden-text">Level, air gap and solution left by day</caption>
          <thead>
            <tr>
              <th scope="col">Day</th>
              <th scope="col" className="number">
                Level
              </th>
              <th scope="col" className="number">
                Air gap
              </th>
              <th scope="col" className="number">
                Left
              </th>
            </tr>
          </thead>
          <tbody>
            {rowsOf(drawDown).map((row) => (
              <tr key={row.day}>
                <th scope="row">
                  {row.day}
                  {row.day === drawDown.refillDay ? <span className="quiet small"> refill</span> : null}
                  {row.day === drawDown.endDay ? <span className="quiet small"> end</span> : null}
                </th>
                <td className="number">{say.length(row.levelMm)}</td>
                <td className="number">{row.gapMm < 0 ? `${say.length(-row.gapMm)} deep` : say.length(row.gapMm)}</td>
                <td className="number">{say.volume(row.litres)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </StripPart>
  )
}

function rowsOf({ days, refillDay, endDay }: DrawDown): DrawDown['days'] {
  const step = Math.ceil(days.length / MOST_ROWS)
  return days.filter(({ day }, at) => at % step === 0 || day === refillDay || day === endDay)
}
