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
  const concentric = concentricIn(input)
  const rows: DrillRow[] = []
  for (const channel of input.channels) {
    const along = [...channel.holes].sort((a, b) => a.atMm - b.atMm)
    let number = 0
    for (const hole of along) {
      number += 1
      const markedAtMm = setOnGraduation(mm(hole.atMm), graduation, 'nearest')
      rows.push({
        channelId: channel.channelId,
        holeId: hole.id,
        mark: `${channel.mark}.${number}`,
        atMm: hole.atMm,
        face: hole.face,
        heightMm: hole.heightMm,
        diameterMm: hole.diameterMm,
        sawId: hole.sawId,
        sawName: nameOf(input, hole),
        concentric: concentric(hole),
        sits: hole.sits,
        markedAtMm,
        roundingMm: markedAtMm - hole.atMm
      })
    }
  }
  return rows
}

/** Half a graduation: no hole's mark is farther from its true place. */
export const roundingLimit = (input: BenchInput): number => input.graduationMm / 2

const nameOf = (input: BenchInput, hole: BenchHole): string =>
  hole.sawId === null ? '' : (sawOf(input, hole.sawId)?.name ?? hole.sawId)

/** Saws on one centre in the order they cut: the larger scores, the smaller goes through, the larger finishes. */
const concentricIn = (input: BenchInput): ((hole: BenchHole) => readonly string[]) => {
  const single = new Map<string, readonly string[]>()
  const nameOfSaw = (id: string): string => sawOf(input, id)?.name ?? id
  return ({ sawId, alsoSawIds }) => {
    if (sawId === null) return BY_NO_SAW
    if (alsoSawIds.length > 0) {
      const names = sawsFalling(input, [sawId, ...alsoSawIds]).map(nameOfSaw)
      return names.length < 2 ? names : [...names, ...names.slice(0, -1).reverse()]
    }
    // Nearly every hole has one saw: its list is made once.
    const known = single.get(sawId) ?? [nameOfSaw(sawId)]
    single.set(sawId, known)
    return known
  }
}

const BY_NO_SAW: readonly string[] = []

/** Saw ids without repeats, the widest first. */
export const sawsFalling = (input: BenchInput, ids: readonly string[]): readonly string[] =>
  [...new Set(ids)].sort((a, b) => (sawOf(input, b)?.diameterMm ?? 0) - (sawOf(input, a)?.diameterMm ?? 0))
