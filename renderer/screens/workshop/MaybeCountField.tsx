import { EntryField } from '../../fields/EntryField'
import type { FieldProps } from '../../fields/field-props'

type Props = FieldProps<number | null> & { readonly whenEmpty?: string }

/** How many there are; empty means as many as are wanted, or what `whenEmpty` says. */
export function MaybeCountField({ whenEmpty = 'no limit', ...props }: Props) {
  return (
    <EntryField
      {...props}
      inputMode="numeric"
      whenEmpty={whenEmpty}
      show={(value) => (value === null ? '' : `${value}`)}
      read={(text) => {
        if (text.trim() === '') return { ok: true, value: null }
        return /^\d{1,6}$/.test(text.trim())
          ? { ok: true, value: Number(text) }
          : { ok: false, problem: `A whole number is needed, or nothing for ${whenEmpty}.` }
      }}
    />
  )
}
