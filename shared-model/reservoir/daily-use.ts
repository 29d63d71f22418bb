import type { PartIndex } from '../seating'

/**
 * Daily use of a channel's plants, mL: the middle of each crop's range (a grower's own measurement is a range of one figure),
 * summed over planted sites. null when a planted crop's use is not known; those crops are named.
 */
export function dailyUse(
  sites: readonly { readonly cropId: string | null }[],
  index: PartIndex
): { readonly dailyMl: number | null; readonly unknownCrops: readonly string[] } {
  let sum = 0
  let planted = 0
  const unknown = new Set<string>()
  for (const { cropId } of sites) {
    const crop = cropId === null ? undefined : index.crops.get(cropId)
    if (!crop) continue
    planted += 1
    if (crop.dailyUseMl) sum += (crop.dailyUseMl.least + crop.dailyUseMl.most) / 2
    else unknown.add(crop.name)
  }
  return { dailyMl: planted === 0 || unknown.size > 0 ? null : sum, unknownCrops: [...unknown] }
}
