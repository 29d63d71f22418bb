import type { RingsProblem } from './codes'
import type { RingsInput } from './rings-input'

/** More parts than this in one batch are a slip of the keyboard. */
const MOST_PARTS = 20_000
const LONGEST_MM = 100_000

type Limit = readonly [field: string, value: number, least: number, most: number]

/** The first figure that cannot be planned with, or null. */
export const refuseRings = (input: RingsInput): RingsProblem | null => {
  const ids = [...input.needs, ...input.plates].map(({ id }) => id)
  const twice = firstTwice(ids) ?? firstTwice(input.sheets.map(({ id }) => id))
  if (twice !== null) return { code: 'sheet-id-twice', figures: { id: twice } }
  for (const [field, value, least, most] of limitsOf(input)) {
    if (!Number.isFinite(value)) return { code: 'not-finite', figures: { what: field }, where: { field } }
    if (value < least || value > most) {
      return { code: 'out-of-range', figures: { what: field, value, least, most }, where: { field } }
    }
  }
  return null
}

const firstTwice = (ids: readonly string[]): string | null => ids.find((id, i) => ids.indexOf(id) !== i) ?? null

const limitsOf = (input: RingsInput): readonly Limit[] => {
  const parts = [...input.needs, ...input.plates].reduce((sum, { count }) => sum + count, 0)
  return [
    ['sheetSetup.webMm', input.setup.webMm, 0, LONGEST_MM],
    ['sheetSetup.edgeMm', input.setup.edgeMm, 0, LONGEST_MM],
    ['sheetSetup.keepFromMm', input.setup.keepFromMm ?? 0, 0, LONGEST_MM],
    ...input.needs.flatMap((need): Limit[] => [
      [`needs.${need.id}.cutDiameterMm`, need.cutDiameterMm, 1, LONGEST_MM],
      [`needs.${need.id}.holeMm`, need.holeMm ?? 0, 0, need.cutDiameterMm],
      [`needs.${need.id}.coreMm`, need.coreMm ?? 0, -LONGEST_MM, need.cutDiameterMm],
      [`needs.${need.id}.count`, need.count, 0, MOST_PARTS]
    ]),
    ...input.plates.flatMap((plate): Limit[] => [
      [`plates.${plate.id}.widthMm`, plate.widthMm, 1, LONGEST_MM],
      [`plates.${plate.id}.heightMm`, plate.heightMm, 1, LONGEST_MM],
      [`plates.${plate.id}.count`, plate.count, 0, MOST_PARTS]
    ]),
    ...input.sheets.flatMap((sheet): Limit[] => [
      [`sheets.${sheet.id}.widthMm`, sheet.widthMm, 0, LONGEST_MM],
      [`sheets.${sheet.id}.heightMm`, sheet.heightMm, 0, LONGEST_MM],
      [`sheets.${sheet.id}.count`, sheet.count ?? 0, 0, Number.MAX_SAFE_INTEGER],
      [`sheets.${sheet.id}.priceMinor`, sheet.offer.priceMinor ?? 0, 0, Number.MAX_SAFE_INTEGER]
    ]),
    ['parts in the batch', parts, 0, MOST_PARTS]
  ]
}
