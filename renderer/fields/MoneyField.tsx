import { parseMoney, showMoney } from '../../shared-model/units'
import { problemText } from '../plan/wording'
import { useApp } from '../store/use-app'
import { EntryField } from './EntryField'
import type { FieldProps } from './field-props'

/** An amount in the workshop's currency, taken while it is typed; empty means that no price is known, never nought. */
export function MoneyField(props: FieldProps<number | null>) {
  const shows = useApp((state) => state.workshop.shows)
  const currency = useApp((state) => state.workshop.currency)
  return (
    <EntryField
      {...props}
      live
      inputMode="decimal"
      show={(value) => (value === null ? '' : showMoney(value, currency, shows.decimalMark))}
      read={(text) => {
        if (text.trim() === '') return { ok: true, value: null }
        const reading = parseMoney(text, currency, shows.decimalMark)
        return reading.ok ? reading : { ok: false, problem: problemText(reading.problem, shows) }
      }}
    />
  )
}
