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
      {first !== null && 'design' in first ? <Drawn first={first} /> : <div className="sill-picture" />}
      <p className="error" role="status">
        {fault === null ? '' : `No first design with this stock here: ${fault}`}
      </p>
      <button type="button" className="button primary" disabled={fault !== null} onClick={begin}>
        Draw it
      </button>
    </div>
  )
}

function Drawn({ first: { design, plan } }: { readonly first: Extract<FirstDesign, { readonly design: unknown }> }) {
  const say = useSay()
  const [seat] = design.seats
  const saw = design.parts.saws.find((each) => each.id === seat?.sawId)
  return (
    <>
      <SillPicture design={design} />
      <dl className="fill-figures">
        <FigureLine name="Plants" value={String(plan.totals.plants)} />
        <FigureLine name="Channel" value={say.length(design.channels[0]?.lengthMm ?? 0)} />
        <FigureLine name="Cup" value={seat?.name ?? ''} />
        <FigureLine name="Sawn with" value={saw?.name ?? ''} />
        <FigureLine name="Solution" value={say.volume(plan.totals.litres)} />
        <FigureLine name="Filled" value={say.mass(plan.load.filledG)} />
      </dl>
    </>
  )
}
