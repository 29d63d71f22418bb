const MOST_SHOWN = 20

/** Why rows were not taken; none was. */
export function NotTaken({ errors }: { readonly errors: readonly string[] }) {
  if (errors.length === 0) return null
  return (
    <div role="alert">
      <p className="error">Nothing was taken. Mend these and try again:</p>
      <ul className="error">
        {errors.slice(0, MOST_SHOWN).map((error) => (
          <li key={error}>{error}</li>
        ))}
      </ul>
      {errors.length > MOST_SHOWN ? <p className="error">And {errors.length - MOST_SHOWN} more.</p> : null}
    </div>
  )
}
