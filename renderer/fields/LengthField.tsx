import type { Shows } from '../../shared-model/design'
import { inchesFromMm, mm, parseLength, showDecimal, showLength } from '../../shared-model/units'
import { problemText } from '../plan/wording'
import { useApp } from '../store/use-app'
import { EntryField } from './EntryField'
import type { FieldProps } from './field-props'

export interface LengthFieldProps extends FieldProps<number> {
  readonly negative?: boolean
  readonly leastMm?: number
  readonly mostMm?: number
  /** Finer than the rule: kerfs, walls, parts; shown as a decimal and never rounded to the graduation. */
  readonly fine?: boolean
}

/** A length in the shop's units: shows it on the graduation, takes it as people type it, keeps it in millimetres. */
export function LengthField({ negative, leastMm, mostMm, fine, ...props }: LengthFieldProps) {
  const shows = useApp((state) => state.workshop.shows)
  return (
    <EntryField
      {...props}
      show={(value) => (fine === true ? fineLength(value, shows) : showLength(mm(value), shows))}
      read={(text) => {
        const reading = parseLength(text, {
          shown: shows.units,
          decimalMark: shows.decimalMark,
          ...(negative === undefined ? {} : { negative }),
          ...(leastMm === undefined ? {} : { leastMm }),
          ...(mostMm === undefined ? {} : { mostMm })
        })
        return reading.ok ? reading : { ok: false, problem: problemText(reading.problem, shows) }
      }}
    />
  )
}

const fineLength = (valueMm: number, shows: Shows): string =>
  shows.units === 'mm'
    ? `${showDecimal(valueMm, 3, shows.decimalMark)} mm`
    : `${showDecimal(inchesFromMm(mm(valueMm)), 4, shows.decimalMark)} in`
