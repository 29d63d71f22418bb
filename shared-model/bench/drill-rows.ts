import { mm, NM_PER_MM, nm, setOnGraduation } from '../units'
import type { BenchHole, BenchInput } from './bench-input'
import type { DrillRow } from './bench-plan'
import { sawOf } from './saw-of'

/**
 * The hole table: running dimensions from each channel's datum end, every one rounded on its own from the exact value,
 * never chained; in order along the channel, top face first.
 */
export const drillRows = (input: BenchInput): readonly DrillRow[] => {
  const graduation = nm(Math.round(input.graduationMm * NM_PER_MM))
  return input.channels.flatMap((channel) =>
    [...channel.holes]
      .sort((a, b) => a.atMm - b.atMm)
      .map((hole, i): DrillRow => {
        const markedAtMm = setOnGraduation(mm(hole.atMm), graduation, 'nearest')
        return {
          channelId: channel.channelId,
          holeId: hole.id,
          mark: `${channel.mark}.${i + 1}`,
          atMm: hole.atMm,
          face: hole.face,
          heightMm: hole.heightMm,
          diameterMm: hole.diameterMm,
          sawId: hole.sawId,
          sawName: nameOf(input, hole),
          concentric: concentricOf(input, hole),
          sits: hole.sits,
          markedAtMm,
          roundingMm: markedAtMm - hole.atMm
        }
      })
  )
}

/** Half a graduation: no hole's mark is farther from its true place. */
export const roundingLimit = (input: BenchInput): number => input.graduationMm / 2

const nameOf = (input: BenchInput, hole: BenchHole): string =>
  hole.sawId === null ? '' : (sawOf(input, hole.sawId)?.name ?? hole.sawId)

/** Saws on one centre in the order they cut: the larger scores, the smaller goes through, the larger finishes. */
const concentricOf = (input: BenchInput, hole: BenchHole): readonly string[] => {
  if (hole.sawId === null) return []
  const falling = sawsFalling(input, [hole.sawId, ...hole.alsoSawIds])
  const names = falling.map((id) => sawOf(input, id)?.name ?? id)
  return names.length < 2 ? names : [...names, ...names.slice(0, -1).reverse()]
}

/** Saw ids without repeats, the widest first. */
export const sawsFalling = (input: BenchInput, ids: readonly string[]): readonly string[] =>
  [...new Set(ids)].sort((a, b) => (sawOf(input, b)?.diameterMm ?? 0) - (sawOf(input, a)?.diameterMm ?? 0))
