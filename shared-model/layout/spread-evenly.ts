import type { Site } from './layout'

/**
 * Sites moved so that they stand evenly between the ones that are kept in place. Locked sites stay; runs of free sites
 * between two locked ones are spaced equally, and outer runs reach to the least end. The order along the channel is kept.
 */
export function spreadEvenly(
  sites: readonly Site[],
  wanted: { readonly lengthMm: number; readonly leastEndMm: number }
): readonly Site[] {
  const order = sites
    .map((site, index) => ({ site, index }))
    .sort((a, b) => a.site.atMm - b.site.atMm || a.index - b.index)
  const movedMm = new Map<string, number>()
  let start = 0
  while (start < order.length) {
    const first = order[start]
    if (!first || first.site.locked) {
      start += 1
      continue
    }
    let end = start
    while (end < order.length && !order[end]?.site.locked) end += 1
    const before = order[start - 1]?.site
    const after = order[end]?.site
    placeRun(
      order.slice(start, end).map((o) => o.site),
      before,
      after,
      wanted,
      movedMm
    )
    start = end
  }
  return sites.map((site) => {
    const atMm = movedMm.get(site.id)
    return atMm === undefined || atMm === site.atMm ? site : { ...site, atMm }
  })
}

function placeRun(
  run: readonly Site[],
  before: Site | undefined,
  after: Site | undefined,
  wanted: { readonly lengthMm: number; readonly leastEndMm: number },
  movedMm: Map<string, number>
): void {
  const n = run.length
  const lowMm = before ? before.atMm : wanted.leastEndMm
  const highMm = after ? after.atMm : wanted.lengthMm - wanted.leastEndMm
  run.forEach((site, i) => {
    if (!before && !after) {
      const share = wanted.lengthMm / n
      const first = n === 1 ? wanted.lengthMm / 2 : Math.max(share / 2, wanted.leastEndMm)
      movedMm.set(site.id, n === 1 ? first : first + (i * (wanted.lengthMm - 2 * first)) / (n - 1))
      return
    }
    const gaps = (before ? 1 : 0) + (after ? 1 : 0) + n - 1
    movedMm.set(site.id, lowMm + ((highMm - lowMm) * (i + (before ? 1 : 0))) / gaps)
  })
}
