/** What every kind of field takes. */
export interface FieldProps<T> {
  readonly label: string
  readonly value: T
  readonly commit: (value: T) => string | null
  readonly path?: string | undefined
  readonly hint?: string | undefined
  readonly disabled?: boolean
  readonly inCell?: boolean
  readonly wide?: boolean
  /** Taken while it is typed; all of it is one step of the history. */
  readonly live?: boolean
}
