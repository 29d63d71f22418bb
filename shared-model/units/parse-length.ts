import { type DecimalMark, readUnsigned } from './parse-decimal'
import { type Mm, mm } from './quantity'
import { addRatio, multiplyRatio, type Ratio, ratio, ratioToNumber } from './ratio'
import { type Reading, read, unread } from './reading'

export interface ParseLengthOptions {
  /** The unit a bare number has: the one the field shows. */
  readonly shown: 'in' | 'mm'
  readonly decimalMark: DecimalMark
  /** Negative lengths (a position left of the datum) are refused unless this is set. */
  readonly negative?: boolean
  /** Both bounds in millimetres; an entry outside them is refused with both. */
  readonly leastMm?: number
  readonly mostMm?: number
}

/** Longest entry that is read at all: a kilometre. */
const MOST_MM = 1_000_000

/**
 * A length as people type it: `7 1/2`, `7-1/2"`, `2' 3 1/2"`, `2 ft 3.5 in`, `190`, `190 mm`, `19 cm`, `1.2 m`, `1,5 cm`.
 * A bare number has the field's shown unit; a fraction without a mark counts only in inches; inches may follow feet without
 * a mark of their own. Worked exactly and turned into millimetres once (1 in = 25.4 mm). What cannot be read is refused with
 * the reason; nothing is guessed.
 *
 * @source nist-handbook-44
 */
export function parseLength(text: string, options: ParseLengthOptions): Reading<Mm> {
  const plain = plainForm(text)
  if (plain === '') return unread({ code: 'entry-empty', figures: {} })
  const negative = plain.startsWith('-')
  if (negative && options.negative !== true) return unread({ code: 'entry-negative', figures: { text } })
  const size = readSize(negative ? plain.slice(1).trim() : plain, text, options)
  if (!size.ok) return size
  const value = ratioToNumber(size.value) * (negative && size.value.num !== 0n ? -1 : 1)
  const least = options.leastMm ?? (options.negative === true ? -MOST_MM : 0)
  const most = options.mostMm ?? MOST_MM
  return value < least || value > most
    ? unread({ code: 'length-outside', figures: { text, valueMm: value, leastMm: least, mostMm: most } })
    : read(mm(value))
}

const FRACTIONS: Readonly<Record<string, string>> = {
  '\u00bc': '1/4',
  '\u00bd': '1/2',
  '\u00be': '3/4',
  '\u215b': '1/8',
  '\u215c': '3/8',
  '\u215d': '5/8',
  '\u215e': '7/8'
}

/** Printed signs turned into typed ones: one-glyph fractions, primes, minus, thin spaces. */
function plainForm(text: string): string {
  return text
    .replace(/[\u00bc-\u00be\u215b-\u215e]/g, (glyph) => ` ${FRACTIONS[glyph] ?? glyph}`)
    .replace(/\u2044/g, '/')
    .replace(/''|[\u2033\u201c\u201d]/g, '"')
    .replace(/[\u2032\u2018\u2019]/g, "'")
    .replace(/[\u2010-\u2012\u2212]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase()
}

const MM_PER: Readonly<Record<string, Ratio>> = {
  mm: ratio(1),
  cm: ratio(10),
  m: ratio(1000),
  in: ratio(127, 5),
  ft: ratio(1524, 5)
}

const UNIT_WORDS: Readonly<Record<string, string>> = {
  '"': 'in',
  in: 'in',
  'in.': 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  ft: 'ft',
  'ft.': 'ft',
  foot: 'ft',
  feet: 'ft',
  mm: 'mm',
  cm: 'cm',
  m: 'm'
}

/** An amount (decimal, fraction or whole and fraction) and the word or mark behind it. */
const AMOUNT = String.raw`(\d+(?: ?[- ] ?)\d+ ?\/ ?\d+|\d+ ?\/ ?\d+|[\d.,]+)`
const ONE = new RegExp(`^${AMOUNT} ?([a-z]+\\.?|['"])?$`)
const FEET_AND_INCHES = new RegExp(`^([\\d.,]+) ?('|ft\\.?|feet|foot) ?-? ?${AMOUNT} ?("|in\\.?|inch|inches)?$`)

function readSize(plain: string, text: string, options: ParseLengthOptions): Reading<Ratio> {
  const both = FEET_AND_INCHES.exec(plain)
  if (both !== null) return readFeetAndInches(both[1] ?? '', both[3] ?? '', text, options)
  const one = ONE.exec(plain)
  const unit = one?.[2] === undefined ? options.shown : UNIT_WORDS[one[2]]
  const factor = unit === undefined ? undefined : MM_PER[unit]
  if (one === null || factor === undefined) return unread({ code: 'entry-unreadable', figures: { text } })
  const amount = one[1] ?? ''
  if (amount.includes('/') && one[2] === undefined && unit !== 'in') {
    return unread({ code: 'entry-fraction-needs-inches', figures: { text } })
  }
  const value = readAmount(amount, text, options.decimalMark)
  return value.ok ? read(multiplyRatio(value.value, factor)) : value
}

function readFeetAndInches(feet: string, inches: string, text: string, options: ParseLengthOptions): Reading<Ratio> {
  if (!/^\d+$/.test(feet)) return unread({ code: 'entry-unreadable', figures: { text } })
  const rest = readAmount(inches, text, options.decimalMark)
  if (!rest.ok) return rest
  const total = addRatio(ratio(BigInt(feet) * 12n), rest.value)
  return read(multiplyRatio(total, ratio(127, 5)))
}

function readAmount(amount: string, text: string, decimalMark: DecimalMark): Reading<Ratio> {
  const mixed = /^(?:(\d+) ?[- ] ?)?(\d+) ?\/ ?(\d+)$/.exec(amount)
  if (mixed === null) return readUnsigned(amount, decimalMark, text)
  const bottom = BigInt(mixed[3] ?? '0')
  if (bottom === 0n) return unread({ code: 'entry-zero-denominator', figures: { text } })
  return read(addRatio(ratio(BigInt(mixed[1] ?? '0')), ratio(BigInt(mixed[2] ?? '0'), bottom)))
}
