import { useApp } from '../store/use-app'

/** What just happened, for those who hear the board rather than see it. */
export function Said() {
  const said = useApp((state) => state.view.said)
  return (
    <div className="hidden-text" aria-live="polite" aria-atomic="true" id="said">
      {said}
    </div>
  )
}
