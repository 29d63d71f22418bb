import { ratioFromDecimal } from './ratio'

/**
 * A whole total split over lines by weight, nothing lost: each line gets the whole part of its quota, the units left go to the
 * largest remainders, earlier lines first where they are equal.
 *
 * quota_i = total * weight_i / sum of weights. Weights are finite and not negative; where all are zero the lines share alike.
 * Throws on a total that is not a whole number or a weight that is negative.
 *
 * @source largest-remainder
 */
export function splitTotal(weights: readonly number[], total: number): readonly number[] {
  if (!Number.isSafeInteger(total)) throw new RangeError('split: the total is not a whole number')
  if (weights.length === 0) return []
  const exact = weights.map(ratioFromDecimal)
  if (exact.some((weight) => weight.num < 0n)) throw new RangeError('split: a weight is negative')
  const den = exact.reduce((common, weight) => common * weight.den, 1n)
  const scaled = exact.map((weight) => weight.num * (den / weight.den))
  const sum = scaled.reduce((a, b) => a + b, 0n)
  const shares = sum === 0n ? scaled.map(() => 1n) : scaled
  return largestRemainder(shares, sum === 0n ? BigInt(shares.length) : sum, total)
}

function largestRemainder(shares: readonly bigint[], sum: bigint, total: number): readonly number[] {
  const size = BigInt(Math.abs(total))
  const lines = shares.map((share, index) => ({ index, whole: (size * share) / sum, rest: (size * share) % sum }))
  const given = lines.reduce((a, line) => a + line.whole, 0n)
  const favoured = [...lines].sort((a, b) => (a.rest === b.rest ? a.index - b.index : a.rest > b.rest ? -1 : 1))
  const extra = new Set(favoured.slice(0, Number(size - given)).map((line) => line.index))
  const sign = total < 0 ? -1 : 1
  return lines.map((line) => {
    const part = Number(line.whole) + (extra.has(line.index) ? 1 : 0)
    return part === 0 ? 0 : sign * part
  })
}
