import { parseDecimal, ratioToNumber } from '../../shared-model/units'
import { problemText } from '../plan/wording'
import { useApp } from '../store/use-app'
import { EntryField } from './EntryField'
import type { FieldProps } from './field-props'
import { shownNumber } from './NumberField'

/** A figure that may be left out: empty means that it is not known, never nought. */
export function MaybeNumberField({ unit, label, ...props }: FieldProps<number | null> & { readonly unit?: string }) {
  const shows = useApp((state) => state.workshop.shows)
  return (
    <EntryField
      {...props}
      label={unit === undefined ? label : `${label} (${unit})`}
      inputMode="decimal"
      show={(value) => (value === null ? '' : shownNumber(value, shows.decimalMark))}
      read={(text) => {
        if (text.trim() === '') return { ok: true, value: null }
        const reading = parseDecimal(text, shows.decimalMark)
        return reading.ok
          ? { ok: true, value: ratioToNumber(reading.value) }
          : { ok: false, problem: problemText(reading.problem, shows) }
      }}
    />
  )
}
