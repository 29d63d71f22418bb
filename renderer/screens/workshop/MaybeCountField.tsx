import { EntryField } from '../../fields/EntryField'
import type { FieldProps } from '../../fields/field-props'

/** How many there are; empty means as many as are wanted. */
export function MaybeCountField(props: FieldProps<number | null>) {
  return (
    <EntryField
      {...props}
      inputMode="numeric"
      show={(value) => (value === null ? '' : `${value}`)}
      read={(text) => {
        if (text.trim() === '') return { ok: true, value: null }
        return /^\d{1,6}$/.test(text.trim())
          ? { ok: true, value: Number(text) }
          : { ok: false, problem: 'A whole number is needed, or nothing for no limit.' }
      }}
    />
  )
}
