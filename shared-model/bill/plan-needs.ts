import type { BilledCuts, BillInput, Need } from './bill-input'

/** Length of stock that leaves the shop with the batch, by profile: bars less the offcuts that are kept. */
export const stockNeeds = (input: BillInput): readonly Need[] =>
  input.cuts
    .filter((cut) => cut.bars.length > 0 || cut.uncut.length > 0)
    .map((cut) => {
      const needed = stockUsedMm(cut)
      return {
        id: `stock:${cut.profileId}`,
        need: 'stock',
        partId: cut.profileId,
        name: input.profiles.find((profile) => profile.id === cut.profileId)?.name ?? cut.profileId,
        unit: 'mm',
        perUnit: needed / input.quantity,
        needed
      }
    })

/** Pieces, kerfs, trims and the ends not kept. */
export const stockUsedMm = (cut: BilledCuts): number =>
  cut.bars.reduce((sum, bar) => sum + bar.lengthMm - (bar.keep ? bar.leftoverMm : 0), 0)

/** Whole sheets by kind, as the ring plan takes them. */
export function sheetNeeds(input: BillInput): readonly Need[] {
  const counts = new Map<string, number>()
  for (const sheet of input.rings?.sheets ?? []) counts.set(sheet.sheetId, (counts.get(sheet.sheetId) ?? 0) + 1)
  return [...counts].map(([partId, needed]) => ({
    id: `sheet:${partId}`,
    need: 'sheet',
    partId,
    name: partId,
    unit: 'piece',
    perUnit: needed / input.quantity,
    needed
  }))
}
