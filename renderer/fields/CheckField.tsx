export interface CheckFieldProps {
  readonly label: string
  readonly value: boolean
  readonly commit: (value: boolean) => unknown
  readonly inCell?: boolean
}

/** Yes or no. */
export function CheckField({ label, value, commit, inCell }: CheckFieldProps) {
  return (
    <label className="check">
      <input
        type="checkbox"
        checked={value}
        aria-label={inCell === true ? label : undefined}
        onChange={(event) => commit(event.target.checked)}
      />
      {inCell === true ? null : label}
    </label>
  )
}
