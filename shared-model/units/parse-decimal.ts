import { type Ratio, ratio, ratioFromDecimal } from './ratio'
import { type Reading, read, unread } from './reading'

export type DecimalMark = '.' | ','

/**
 * A plain decimal as typed, exactly: `12`, `12.5`, `.5`, `-3`. The decimal mark is given, never guessed from a locale: with a
 * point, `1,500` is refused with both its readings, and any other comma as the wrong mark.
 */
export function parseDecimal(text: string, decimalMark: DecimalMark): Reading<Ratio> {
  const trimmed = text.trim().replace(/\u2212/g, '-')
  if (trimmed === '') return unread({ code: 'entry-empty', figures: {} })
  const unsigned = trimmed.replace(/^[+-]/, '')
  const size = readUnsigned(unsigned, decimalMark, text)
  if (!size.ok) return size
  return trimmed.startsWith('-') ? read(ratio(-size.value.num, size.value.den)) : size
}

/** Digits with at most one decimal mark; `whole` is the entry that a refusal quotes. */
export function readUnsigned(digits: string, decimalMark: DecimalMark, whole: string): Reading<Ratio> {
  const other = decimalMark === '.' ? ',' : '.'
  const plain = decimalMark === ',' ? digits.replace(',', '.') : digits
  const pattern = decimalMark === '.' ? /^(\d+(\.\d*)?|\.\d+)$/ : /^(\d+(,\d*)?|,\d+)$/
  if (pattern.test(digits)) return read(ratioFromDecimal(plain))
  if (/^\d{1,3}([.,]\d{3})+$/.test(digits) && !digits.includes(decimalMark)) {
    const marks = digits.split(other).length - 1
    if (marks === 1) {
      const figures = { text: whole, first: digits.replace(other, ''), second: digits.replace(other, decimalMark) }
      return unread({ code: 'entry-two-readings', figures })
    }
  }
  if (/^[\d.,]*\d[\d.,]*$/.test(digits) && digits.includes(other)) {
    return unread({ code: 'entry-wrong-mark', figures: { text: whole, mark: decimalMark } })
  }
  return unread({ code: 'entry-unreadable', figures: { text: whole } })
}
