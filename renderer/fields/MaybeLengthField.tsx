import { mm, parseLength, showLength } from '../../shared-model/units'
import { problemText } from '../plan/wording'
import { useApp } from '../store/use-app'
import { EntryField } from './EntryField'
import type { FieldProps } from './field-props'

/** A length that may be left out: an empty field means that it is not known. */
export function MaybeLengthField(props: FieldProps<number | null>) {
  const shows = useApp((state) => state.workshop.shows)
  return (
    <EntryField
      {...props}
      show={(value) => (value === null ? '' : showLength(mm(value), shows))}
      read={(text) => {
        if (text.trim() === '') return { ok: true, value: null }
        const reading = parseLength(text, { shown: shows.units, decimalMark: shows.decimalMark })
        return reading.ok ? reading : { ok: false, problem: problemText(reading.problem, shows) }
      }}
    />
  )
}
