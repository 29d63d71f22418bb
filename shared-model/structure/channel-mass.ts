import { type Channel, type ChannelLayout, pointOnSill } from '../layout'
import { material, waterDensity } from '../materials'
import { failed, ok, type Result } from '../outcome'
import { type Cup, cupVolume } from '../parts'
import { massPerMetre } from '../profile'
import { type Basin, solutionCentre } from '../reservoir'
import type { PartIndex, SeatFit } from '../seating'
import { celsius, MM3_PER_LITRE } from '../units'
import type { StructureProblem } from './codes'
import type { MassCentre } from './load'

/** A mass and its centre, along the channel from its datum end and above the sill's face. */
export interface Mass {
  readonly grams: number
  readonly alongMm: number
  readonly zMm: number
}

export interface ChannelMasses {
  readonly empty: Mass
  readonly filled: Mass
  readonly grown: Mass
}

/** Height of a plant's mass as a share of its own height above its cup. Common practice, no source. @source plant-mass-height */
const PLANT_CENTRE_SHARE = 0.5

/**
 * What a channel weighs empty, filled and grown, and where its mass centre is. Profile by its average wall less its holes,
 * closures as weighed, cups, risers and collars, solution by the density table, wet medium in the planted cups (whole, also
 * where it stands in the solution: that errs to the heavy side), plants at full growth, however small they are drawn.
 */
export function channelMasses(
  channel: Channel,
  layout: ChannelLayout,
  fits: readonly SeatFit[],
  index: PartIndex,
  water: {
    readonly litres: number
    readonly levelMm: number
    readonly celsius: number
    readonly mediumGPerL: number
    readonly basin: Basin
  }
): Result<ChannelMasses, StructureProblem> {
  const profile = index.profiles.get(channel.profileId)
  const datum = index.closures.get(channel.datumClosureId)
  const far = index.closures.get(channel.farClosureId)
  if (!profile) return missing(channel, 'profile', channel.profileId)
  if (!datum) return missing(channel, 'end closure', channel.datumClosureId)
  if (!far) return missing(channel, 'end closure', channel.farClosureId)
  const density = waterDensity(celsius(water.celsius))
  if (!density.ok) return density

  const floorMm = layout.standsMm + layout.section.averageWallMm
  const middleMm = layout.standsMm + layout.section.heightMm / 2
  const sum = massSum()
  const gPerCm3 = material(profile.material).densityGPerCm3
  sum.add((massPerMetre(layout.section, gPerCm3) * channel.lengthMm) / 1000, channel.lengthMm / 2, middleMm)
  for (const hole of layout.holes) {
    const discG = ((Math.PI / 4) * hole.diameterMm ** 2 * layout.section.averageWallMm * gPerCm3) / 1000
    sum.add(-discG, hole.atMm, hole.face === 'top' ? layout.standsMm + layout.section.heightMm : middleMm)
  }
  sum.add(datum.massG, (datum.insideDepthMm - datum.addsLengthMm) / 2, middleMm)
  sum.add(far.massG, channel.lengthMm - (far.insideDepthMm - far.addsLengthMm) / 2, middleMm)
  channel.sites.forEach((site, i) => {
    const fit = fits[i]
    if (fit) sum.add(fit.massG, site.atMm, floorMm + fit.massAtMm)
  })
  const empty = sum.mass()
  const solution = solutionCentre(water.basin, water.levelMm)
  sum.add(water.litres * density.value * 1000, solution.alongMm, floorMm + solution.heightMm)
  channel.sites.forEach((site, i) => {
    const fit = fits[i]
    const cup = fit && site.cropId !== null ? plantCup(fit, index) : undefined
    if (!fit || !cup) return
    const mediumG = (cupVolume(cup) / MM3_PER_LITRE) * water.mediumGPerL
    sum.add(mediumG, site.atMm, floorMm + fit.undersideMm + cup.heightMm / 2)
  })
  const filled = sum.mass()
  channel.sites.forEach((site, i) => {
    const crop = site.cropId === null ? undefined : index.crops.get(site.cropId)
    if (!crop) return
    const topMm = floorMm + (fits[i]?.topMm ?? layout.section.heightMm)
    sum.add(crop.grownMassG, site.atMm, topMm + crop.plantHeightMm * PLANT_CENTRE_SHARE)
  })
  return ok({ empty, filled, grown: sum.mass() })
}

/** The cup the plant grows in. */
const plantCup = (fit: SeatFit, index: PartIndex): Cup | undefined => {
  const at = fit.interfaces.findLast((part) => part.kind === 'cup')
  return at && index.cups.get(at.partId)
}

/** A channel's mass centre on the sill. */
export function onSill(channel: Channel, mass: Mass): MassCentre {
  const { xMm, yMm } = pointOnSill(channel, mass.alongMm)
  return { xMm, yMm, zMm: mass.zMm }
}

/** Masses summed with their moments, so that stages build on each other. */
interface Sum {
  readonly add: (grams: number, alongMm: number, zMm: number) => void
  readonly mass: () => Mass
}

function massSum(): Sum {
  let sumG = 0
  let along = 0
  let height = 0
  return {
    add(grams, alongMm, zMm) {
      sumG += grams
      along += grams * alongMm
      height += grams * zMm
    },
    mass: () =>
      sumG > 0 ? { grams: sumG, alongMm: along / sumG, zMm: height / sumG } : { grams: 0, alongMm: 0, zMm: 0 }
  }
}

function missing(
  channel: Channel,
  kind: string,
  partId: string
): { readonly ok: false; readonly problem: StructureProblem } {
  return failed({ code: 'load-part-missing', figures: { kind, partId }, where: { channelId: channel.id, partId } })
}
