import { useEffect, useState } from 'react'
import { usePlanState, usePlanStore } from '../plan/use-plan'

/** Work that takes longer than this is shown. */
const SHOW_AFTER_MS = 500

/** Says that the plan is being worked out, once that takes a while, and lets it be stopped. */
export function Working() {
  const working = usePlanState((state) => state.working)
  const stale = usePlanState((state) => state.stale)
  const failed = usePlanState((state) => state.failed)
  const planStore = usePlanStore()
  const [long, setLong] = useState(false)
  useEffect(() => {
    setLong(false)
    if (!working) return
    const timer = setTimeout(() => setLong(true), SHOW_AFTER_MS)
    return () => clearTimeout(timer)
  }, [working])
  if (working && long) {
    return (
      <div className="progress" role="status">
        <progress aria-label="Working out the cuts" />
        <span>
          {stale
            ? 'Working out the cuts; what is shown is from before the last change.'
            : 'Trying to prove that no cheaper way exists.'}
        </span>
        <button type="button" className="button" onClick={planStore.cancel}>
          Stop
        </button>
      </div>
    )
  }
  if (failed !== null || (stale && !working)) {
    return (
      <div className="progress" role="status">
        <span>
          {failed === null
            ? 'What is shown is from before the last change.'
            : `The plan could not be worked out: ${failed}.`}
        </span>
        <button type="button" className="button" onClick={planStore.again}>
          Work it out
        </button>
      </div>
    )
  }
  return null
}
