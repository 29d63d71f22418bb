import type { Channel, ChannelLayout, Sill } from '../layout'
import { boreOf, type Section } from '../profile'
import type { SeatFit, Solid } from '../seating'
import { type Cone, conesOf } from './cones'

/**
 * The water body of one channel: its bore between the closures, how it lies, and what stands in it. Levels are above the
 * inside floor at the deepest end, on the channel's centre line. A fall across it turns the surface about that line: the
 * litres stay (the wedge that one side gains the other loses), the low side stands higher by half the width times the fall.
 */
export interface Basin {
  readonly section: Section
  readonly insideHeightMm: number
  readonly wetFromMm: number
  readonly wetLengthMm: number
  /** Rise of the floor for each mm away from the datum end. */
  readonly slope: number
  /** Rise of the floor for each mm across, to the left of the way it runs from its datum end: its back. */
  readonly slopeAcross: number
  /** Where along the channel the bore is deepest. */
  readonly deepestAtMm: number
  /** Sites that share a seat and a height above the deepest point are worked out once. */
  readonly stands: readonly Stand[]
  /** Level up to which the widest part is narrower than the bore's surface: above it, only what lies between the walls counts. */
  readonly freeToMm: number
}

export interface Stand {
  readonly solids: readonly Solid[]
  /** The frustums of those solids that reach into the bore. */
  readonly cones: readonly Cone[]
  readonly count: number
  readonly riseMm: number
}

export function basinOf(channel: Channel, layout: ChannelLayout, fits: readonly SeatFit[], sill: Sill): Basin {
  const bore = boreOf(layout.section)
  const slope = channelSlope(channel, sill)
  const deepestAtMm = slope >= 0 ? layout.wetFromMm : layout.wetFromMm + layout.wetLengthMm
  return {
    section: layout.section,
    insideHeightMm: bore.heightMm,
    wetFromMm: layout.wetFromMm,
    wetLengthMm: layout.wetLengthMm,
    slope,
    slopeAcross: channelSlopeAcross(channel, sill),
    deepestAtMm,
    stands: standsOf(channel, fits, slope, deepestAtMm, bore.heightMm),
    freeToMm: freeLevel(bore, fits)
  }
}

/** Supports nearer than this stand as one and set no slope, mm. */
const LEAST_APART_MM = 10

/** An empty bore of a length, lying level: for volumes before anything stands in it. */
export function emptyBasin(section: Section, wetLengthMm: number): Basin {
  const insideHeightMm = boreOf(section).heightMm
  return {
    section,
    insideHeightMm,
    wetFromMm: 0,
    wetLengthMm,
    slope: 0,
    slopeAcross: 0,
    deepestAtMm: 0,
    stands: [],
    freeToMm: insideHeightMm
  }
}

/** How far the floor at a distance from the datum end lies above the deepest point. */
export const riseAt = (basin: Basin, atMm: number): number => basin.slope * (atMm - basin.deepestAtMm)

/**
 * Rise of a channel for each mm from its datum end: the sill's fall along or across it, and its outermost supports' heights.
 */
export function channelSlope(channel: Pick<Channel, 'heading' | 'supports'>, sill: Sill): number {
  const alongMmPerM =
    channel.heading === 0
      ? sill.fallAlongMmPerM
      : channel.heading === 180
        ? -sill.fallAlongMmPerM
        : channel.heading === 90
          ? sill.fallAcrossMmPerM
          : -sill.fallAcrossMmPerM
  const supports = [...channel.supports].sort((a, b) => a.atMm - b.atMm)
  const first = supports[0]
  const last = supports.at(-1)
  const bySupports =
    first && last && last.atMm - first.atMm >= LEAST_APART_MM
      ? (last.heightMm - first.heightMm) / (last.atMm - first.atMm)
      : 0
  return alongMmPerM / 1000 + bySupports
}

/** Rise of a channel for each mm across it, to the left of the way it runs: the sill's other fall. Feet follow the sill. */
export function channelSlopeAcross(channel: Pick<Channel, 'heading'>, sill: Sill): number {
  switch (channel.heading) {
    case 0:
      return sill.fallAcrossMmPerM / 1000
    case 90:
      return -sill.fallAlongMmPerM / 1000
    case 180:
      return -sill.fallAcrossMmPerM / 1000
    case 270:
      return sill.fallAlongMmPerM / 1000
  }
}

/** How much nearer to the surface the low edge of a disc about the centre line lies than its middle, mm. */
export const edgeDrop = (basin: Basin, diameterMm: number): number =>
  (Math.hypot(basin.slope, basin.slopeAcross) * diameterMm) / 2

function standsOf(
  channel: Channel,
  fits: readonly SeatFit[],
  slope: number,
  deepestAtMm: number,
  insideHeightMm: number
): readonly Stand[] {
  const bySolids = new Map<readonly Solid[], { readonly cones: readonly Cone[]; count: number }>()
  for (const { solids } of fits) {
    const known = bySolids.get(solids)
    if (known) known.count += 1
    else bySolids.set(solids, { cones: conesOf(solids, insideHeightMm), count: 1 })
  }
  if (slope === 0) return [...bySolids].map(([solids, { cones, count }]) => ({ solids, cones, count, riseMm: 0 }))
  return fits.map(({ solids }, i) => ({
    solids,
    cones: bySolids.get(solids)?.cones ?? [],
    count: 1,
    riseMm: slope * ((channel.sites[i]?.atMm ?? deepestAtMm) - deepestAtMm)
  }))
}

function freeLevel(bore: ReturnType<typeof boreOf>, fits: readonly SeatFit[]): number {
  let widestMm = 0
  for (const fit of fits) {
    for (const solid of fit.solids) {
      if (solid.fromMm < bore.heightMm) widestMm = Math.max(widestMm, solid.lowerOutsideMm, solid.upperOutsideMm)
    }
  }
  const flatMm = bore.widthMm - 2 * bore.cornerRadiusMm
  if (widestMm <= flatMm) return bore.heightMm
  const half = Math.min((widestMm - flatMm) / 2, bore.cornerRadiusMm)
  const fromTopMm = bore.cornerRadiusMm - Math.sqrt(Math.max(0, bore.cornerRadiusMm ** 2 - half * half))
  return bore.heightMm - fromTopMm
}
