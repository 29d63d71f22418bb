import type { PlanProblem } from '../../../shared-model/plan'
import { problemText } from '../../plan/wording'
import { useActions, useApp } from '../../store/use-app'

/** Why a way of selling has no price, or never pays, and why nothing has one. */
export function NoPrice({ problems }: { readonly problems: readonly PlanProblem[] }) {
  const shows = useApp((state) => state.workshop.shows)
  const own = problems.filter(({ where }) =>
    /^(pricing\.|currency$|quantity$|saws\.|offers\.)/.test(where?.field ?? '')
  )
  const { look } = useActions()
  if (own.length === 0) return null
  const atOffer = own.some(({ where }) => where?.field?.startsWith('offers.'))
  return (
    <section className="part" aria-label="What has no price">
      <div className="part-head">
        <h2>What has no price, and why</h2>
        {atOffer ? (
          <button type="button" className="button" onClick={() => look({ screen: 'workshop' })}>
            Enter prices in the workshop
          </button>
        ) : null}
      </div>
      <ul className="reasons" role="alert">
        {own.map((problem) => (
          <li key={`${problem.code} ${problem.where?.field}`} className="error">
            {problemText(problem, shows)}
          </li>
        ))}
      </ul>
    </section>
  )
}
