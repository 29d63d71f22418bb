import type { BenchInput } from './bench-input'

/** The same work for one unit made alone: its share of pieces, collars and risers, none of them below what it needs. */
export const oneUnit = (input: BenchInput): BenchInput => {
  const { quantity } = input
  const seen = new Set<string>()
  const share = (count: number) => Math.ceil(count / quantity)
  const collars = input.collars.map((collar) => {
    const wanted = share(collar.fromSheet + collar.fromCores.reduce((sum, { count }) => sum + count, 0))
    const fromSheet = Math.min(wanted, share(collar.fromSheet))
    let left = wanted - fromSheet
    const fromCores = collar.fromCores.map((core) => {
      const count = Math.min(left, share(core.count))
      left -= count
      return { ...core, count }
    })
    return { ...collar, fromSheet, fromCores }
  })
  return {
    ...input,
    quantity: 1,
    channels: input.channels.map(({ toDrill: _, ...channel }) => channel),
    pieces: input.pieces.filter(({ channelId }) => !seen.has(channelId) && seen.add(channelId)),
    collars,
    collarSheets: Math.min(input.collarSheets, share(input.collarSheets)),
    risers: input.risers.map((riser) => ({ ...riser, count: share(riser.count) }))
  }
}
