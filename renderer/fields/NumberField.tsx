import { parseDecimal, ratioToNumber } from '../../shared-model/units'
import { problemText } from '../plan/wording'
import { useApp } from '../store/use-app'
import { EntryField } from './EntryField'
import type { FieldProps } from './field-props'

export interface NumberFieldProps extends FieldProps<number> {
  readonly whole?: boolean
  readonly least?: number
  readonly most?: number
  /** Stands behind the figure: `%`, `s`, `kg`. */
  readonly unit?: string
}

/** A plain number, kept as typed to the last digit. */
export function NumberField({ whole, least, most, unit, label, ...props }: NumberFieldProps) {
  const shows = useApp((state) => state.workshop.shows)
  return (
    <EntryField
      {...props}
      label={unit === undefined ? label : `${label} (${unit})`}
      inputMode={whole === true ? 'numeric' : 'decimal'}
      show={(value) => shownNumber(value, shows.decimalMark)}
      read={(text) => {
        const reading = parseDecimal(text, shows.decimalMark)
        if (!reading.ok) return { ok: false, problem: problemText(reading.problem, shows) }
        const value = ratioToNumber(reading.value)
        if (whole === true && !Number.isInteger(value)) return { ok: false, problem: 'A whole number is needed.' }
        if ((least !== undefined && value < least) || (most !== undefined && value > most)) {
          return { ok: false, problem: bounds(least, most) }
        }
        return { ok: true, value }
      }}
    />
  )
}

/** Up to six decimals, without trailing noughts. */
export const shownNumber = (value: number, decimalMark: '.' | ','): string =>
  String(Number(value.toFixed(6))).replace('.', decimalMark)

const bounds = (least: number | undefined, most: number | undefined): string =>
  least !== undefined && most !== undefined
    ? `It must be from ${least} to ${most}.`
    : least !== undefined
      ? `It must be at least ${least}.`
      : `It must be at most ${most ?? ''}.`
