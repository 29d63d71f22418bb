import { type EntrySetup, useEntry } from './use-entry'

export interface EntryFieldProps<T> extends EntrySetup<T> {
  readonly label: string
  readonly hint?: string | undefined
  /** Shown in its place while nothing is entered: what nothing means. */
  readonly whenEmpty?: string
  /** Dotted path of the field, so that a finding can send the hand here. */
  readonly path?: string | undefined
  readonly disabled?: boolean
  readonly inputMode?: 'text' | 'decimal' | 'numeric'
  /** In a table's cell the heading stands in for the label. */
  readonly inCell?: boolean
  readonly wide?: boolean
}

/** A labelled figure that is typed, with its reason below it when it cannot be read. */
export function EntryField<T>({
  label,
  hint,
  whenEmpty,
  disabled,
  inputMode,
  inCell,
  wide,
  path,
  ...setup
}: EntryFieldProps<T>) {
  const entry = useEntry(setup)
  const noteId = `${entry.id}-note`
  const input = (
    <input
      id={entry.id}
      data-path={path}
      className={inCell === true ? `cell-input${wide === true ? ' wide' : ''}` : undefined}
      type="text"
      inputMode={inputMode ?? 'text'}
      autoComplete="off"
      spellCheck={false}
      placeholder={whenEmpty}
      disabled={disabled}
      value={entry.text}
      aria-label={inCell === true ? label : undefined}
      aria-invalid={entry.error !== null}
      aria-describedby={entry.error !== null || hint !== undefined ? noteId : undefined}
      onChange={(event) => entry.change(event.target.value)}
      onBlur={entry.leave}
      onKeyDown={entry.key}
    />
  )
  const note =
    entry.error !== null ? (
      <p className="error" id={noteId} role="alert">
        {entry.error}
      </p>
    ) : hint !== undefined ? (
      <p className="hint" id={noteId}>
        {hint}
      </p>
    ) : null
  if (inCell === true) {
    return (
      <>
        {input}
        {note}
      </>
    )
  }
  return (
    <div className="field">
      <label htmlFor={entry.id}>{label}</label>
      {input}
      {note}
    </div>
  )
}
