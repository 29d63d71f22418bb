import { FigureLine } from '../drawing/FigureLine'
import { SillPicture } from '../drawing/SillPicture'
import { problemText, wordsOf } from '../plan/wording'
import { useApp } from '../store/use-app'
import { useSay } from '../store/use-say'
import type { FirstDesign } from './first-design'

/** What the three steps lead to, drawn before it is taken, or why there is no such design. */
export function FirstPicture({ first, begin }: { readonly first: FirstDesign | null; readonly begin: () => void }) {
  const shows = useApp((state) => state.workshop.shows)
  const fault =
    first === null || 'design' in first
      ? null
      : 'finding' in first
        ? wordsOf(first.finding, shows)
        : problemText(first.problem, shows)
  return (
    <div className="card first-picture">
      <h2>What it comes to</h2>
      {fault === null ? <Drawn first={first !== null && 'design' in first ? first : null} /> : null}
      <p className="error" role="status">
        {fault === null ? '' : `No first design with this stock here: ${fault}`}
      </p>
      <button type="button" className="button primary" disabled={fault !== null} onClick={begin}>
        Draw it
      </button>
    </div>
  )
}

/** The sill alone, and room for the figures, until they are worked out. */
function Drawn({ first }: { readonly first: Extract<FirstDesign, { readonly design: unknown }> | null }) {
  const bare = useApp((state) => state.design)
  const say = useSay()
  const design = first?.design ?? bare
  const [seat] = design.seats
  const saw = design.parts.saws.find((each) => each.id === seat?.sawId)
  const figure = (name: string, value: string) => <FigureLine name={name} value={first === null ? '…' : value} />
  return (
    <>
      <SillPicture design={design} />
      <dl className="fill-figures">
        {figure('Plants', String(first?.plan.totals.plants))}
        {figure('Channel', say.length(design.channels[0]?.lengthMm ?? 0))}
        {figure('Cup', seat?.name ?? '')}
        {figure('Sawn with', saw?.name ?? '')}
        {figure('Solution', say.volume(first?.plan.totals.litres ?? 0))}
        {figure('Filled', say.mass(first?.plan.load.filledG ?? 0))}
      </dl>
    </>
  )
}
