import type { SheetState } from './use-written-sheet'

/** Says that the pages are being written and lets it be stopped. */
export function SheetProgress({ state }: { readonly state: SheetState }) {
  if (state.working) {
    return (
      <div className="progress" role="status">
        <progress aria-label="Writing the pages" />
        <span>Writing the pages…</span>
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
