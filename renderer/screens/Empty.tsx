import { useActions } from '../store/use-app'

/** Nothing to show yet, and what to do next. */
export function Empty({ says }: { readonly says: string }) {
  const { look } = useActions()
  return (
    <div className="empty">
      <p>{says}</p>
      <button type="button" className="button" onClick={() => look({ screen: 'board', started: true })}>
        Go to the board
      </button>
    </div>
  )
}
