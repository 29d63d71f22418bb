import { EntryField } from './EntryField'
import type { FieldProps } from './field-props'

/** A line of text. */
export function TextField(props: FieldProps<string>) {
  return <EntryField {...props} show={(value) => value} read={(text) => ({ ok: true, value: text })} />
}
