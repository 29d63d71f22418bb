import type { SheetState } from './use-written-sheet'

/** Says how far the writing of the pages is and lets it be stopped. */
export function SheetProgress({ state }: { readonly state: SheetState }) {
  if (state.working) {
    return (
      <div className="progress" role="status">
        {state.share === null ? (
          <progress aria-label="Writing the pages" />
        ) : (
          <progress aria-label="Writing the pages" value={state.share} />
        )}
        <span>
          {state.share === null ? 'Laying out the pages…' : `Writing the pages, ${Math.round(state.share * 100)} %`}
        </span>
        <button type="button" className="button" onClick={state.cancel}>
          Stop
        </button>
      </div>
    )
  }
  if (state.failed !== null) {
    return (
      <div className="progress" role="status">
        <span>{state.failed}</span>
        <button type="button" className="button" onClick={state.again}>
          Write again
        </button>
      </div>
    )
  }
  return state.written === null ? (
    <p className="quiet">Waiting for the plan…</p>
  ) : (
    <p className="quiet" role="status">
      {state.written.pages} pages
    </p>
  )
}
