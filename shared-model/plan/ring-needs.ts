import type { Design } from '../design'
import { collarRing } from '../parts'
import { sectionOf } from '../profile'
import type { PlateNeed, RingNeed } from '../rings'
import type { PartIndex } from '../seating'
import type { PlanProblem } from './codes'
import type { SiteTally } from './site-tally'

/** What the batch needs from sheet: collars, plant collars cut with one saw, glued end plates. */
export const ringNeedsOf = (
  design: Design,
  index: PartIndex,
  tallies: readonly SiteTally[]
): {
  readonly needs: readonly RingNeed[]
  readonly plates: readonly PlateNeed[]
  readonly problems: readonly PlanProblem[]
} => {
  const counts = stackCounts(tallies, index)
  const needs: RingNeed[] = []
  const problems: PlanProblem[] = []
  for (const collar of design.parts.collars) {
    const count = counts.get(`collar ${collar.id}`) ?? 0
    const outer = index.saws.get(collar.outerSawId)
    const inner = index.saws.get(collar.innerSawId)
    if (count === 0 || outer === undefined || inner === undefined) continue
    const ring = collarRing(collar, outer, inner)
    if (!ring.ok) {
      problems.push(ring.problem)
      continue
    }
    needs.push({
      id: collar.id,
      name: collar.name,
      outerSawId: collar.outerSawId,
      innerSawId: collar.innerSawId,
      cutDiameterMm: outer.diameterMm,
      outsideMm: ring.value.outsideMm,
      holeMm: ring.value.holeMm,
      coreMm: ring.value.coreMm,
      count: count * design.quantity,
      material: collar.material,
      thicknessMm: collar.thicknessMm
    })
  }
  for (const disc of design.parts.plantCollars) {
    const count = counts.get(`plant-collar ${disc.id}`) ?? 0
    const saw = disc.sawId === null ? undefined : index.saws.get(disc.sawId)
    if (count === 0 || saw === undefined) continue
    needs.push({
      id: disc.id,
      name: disc.name,
      outerSawId: saw.id,
      innerSawId: null,
      cutDiameterMm: saw.diameterMm,
      outsideMm: saw.diameterMm - 2 * saw.kerfMm,
      holeMm: null,
      coreMm: null,
      count: count * design.quantity,
      material: PLANT_COLLAR_MATERIAL,
      thicknessMm: disc.thicknessMm
    })
  }
  return { needs, plates: platesOf(design, index), problems }
}

/** A plant collar is soft closed-cell foam, whoever cuts it. */
export const PLANT_COLLAR_MATERIAL = 'eva-foam'

/** How many of each stacked part one unit has, by `kind id`. */
export const stackCounts = (tallies: readonly SiteTally[], index: PartIndex): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>()
  for (const { seats } of tallies)
    for (const [seatId, sites] of seats)
      for (const { kind, partId } of index.seats.get(seatId)?.stack ?? []) {
        const key = `${kind} ${partId}`
        counts.set(key, (counts.get(key) ?? 0) + sites)
      }
  return counts
}

/** Glued end plates, cut to the outside of their profile; plates of one size and sheet are one need. */
const platesOf = (design: Design, index: PartIndex): readonly PlateNeed[] => {
  const plates = new Map<string, PlateNeed>()
  for (const channel of design.channels) {
    const profile = index.profiles.get(channel.profileId)
    if (profile === undefined) continue
    const { widthMm, heightMm } = sectionOf(profile, false)
    for (const closureId of [channel.datumClosureId, channel.farClosureId]) {
      const closure = index.closures.get(closureId)
      if (closure?.kind !== 'glued-plate') continue
      const id = `${closure.id}.${profile.id}`
      const count = (plates.get(id)?.count ?? 0) + design.quantity
      const name = `${closure.name}, ${profile.name}`
      plates.set(id, {
        id,
        name,
        widthMm,
        heightMm,
        count,
        material: closure.material,
        thicknessMm: closure.addsLengthMm
      })
    }
  }
  return [...plates.values()]
}
