import { Icon } from '../icons/Icon'
import { useCurrentPlan } from '../plan/use-plan'
import { useActions, useApp } from '../store/use-app'
import { FindingLine, ProblemLine } from './FindingLine'
import { Totals } from './Totals'

const ORDER = { stop: 0, warn: 1, note: 2 } as const

/** Counts of what the plan has to say, and the list of it: what cannot be worked out first, as a stop. */
export function FindingsStrip() {
  const open = useApp((state) => state.view.findingsOpen)
  const plan = useCurrentPlan()
  const { look } = useActions()
  const sorted = [...plan.findings].sort((a, b) => ORDER[a.severity] - ORDER[b.severity])
  const { problems } = plan
  const { stops, warns, notes } = plan.totals
  return (
    <section className="findings-strip" aria-label="Findings">
      <div className="findings-bar">
        <button
          type="button"
          className="button"
          aria-expanded={open}
          aria-controls="findings-list"
          onClick={() => look({ findingsOpen: !open })}
        >
          <span className="tag stop">
            <Icon name="stop" />
            {stops + problems.length} stop
          </span>
          <span className="tag warn">
            <Icon name="warn" />
            {warns} to mind
          </span>
          <span className="tag note">
            <Icon name="note" />
            {notes} {notes === 1 ? 'note' : 'notes'}
          </span>
          <Icon name="more" />
          <span className="hidden-text">{open ? 'Hide findings' : 'Show findings'}</span>
        </button>
        <Totals plan={plan} />
      </div>
      {open ? (
        <div className="findings-list" id="findings-list">
          {sorted.length + problems.length === 0 ? (
            <p className="finding">Nothing to say against this design.</p>
          ) : null}
          <ul>
            {problems.map((problem, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two problems may be alike in all but their place
              <ProblemLine key={`${problem.code}-${index}`} problem={problem} />
            ))}
            {sorted.map((finding, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two findings may be alike in all but their place
              <FindingLine key={`${finding.code}-${index}`} finding={finding} />
            ))}
          </ul>
        </div>
      ) : null}
    </section>
  )
}
