import { GRAMS_PER_POUND, parseDecimal, ratioToNumber } from '../../../shared-model/units'
import { EntryField } from '../../fields/EntryField'
import type { FieldProps } from '../../fields/field-props'
import { shownNumber } from '../../fields/NumberField'
import { problemText } from '../../plan/wording'
import { useApp } from '../../store/use-app'

/** A load in kilograms or pounds; empty means that no figure is given. */
export function MaybeKilogramsField({ label, ...props }: FieldProps<number | null>) {
  const shows = useApp((state) => state.workshop.shows)
  const perKg = shows.units === 'in' ? 1000 / GRAMS_PER_POUND : 1
  return (
    <EntryField
      {...props}
      label={`${label} (${shows.units === 'in' ? 'lb' : 'kg'})`}
      inputMode="decimal"
      show={(value) => (value === null ? '' : shownNumber(Number((value * perKg).toFixed(2)), shows.decimalMark))}
      read={(text) => {
        if (text.trim() === '') return { ok: true, value: null }
        const reading = parseDecimal(text, shows.decimalMark)
        return reading.ok
          ? { ok: true, value: ratioToNumber(reading.value) / perKg }
          : { ok: false, problem: problemText(reading.problem, shows) }
      }}
    />
  )
}
