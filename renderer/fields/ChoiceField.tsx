import { useId } from 'react'

export interface Choice<T extends string> {
  readonly value: T
  readonly label: string
}

export interface ChoiceFieldProps<T extends string> {
  readonly label: string
  readonly value: T
  readonly choices: readonly Choice<T>[]
  readonly commit: (value: T) => unknown
  readonly path?: string | undefined
  readonly inCell?: boolean
  readonly hint?: string
}

/** One of a short list. */
export function ChoiceField<T extends string>(props: ChoiceFieldProps<T>) {
  const { label, value, choices, commit, path, inCell, hint } = props
  const id = useId()
  const select = (
    <select
      id={id}
      data-path={path}
      className={inCell === true ? 'cell-input' : undefined}
      aria-label={inCell === true ? label : undefined}
      value={value}
      title={choices.find((choice) => choice.value === value)?.label}
      onChange={(event) => {
        const chosen = choices.find((choice) => choice.value === event.target.value)
        if (chosen !== undefined) commit(chosen.value)
      }}
    >
      {choices.some((choice) => choice.value === value) ? null : <option value={value}>{value}</option>}
      {choices.map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.label}
        </option>
      ))}
    </select>
  )
  if (inCell === true) return select
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {select}
      {hint === undefined ? null : <p className="hint">{hint}</p>}
    </div>
  )
}
