import type { Channel, ChannelLayout } from '../layout'
import { material, thermalGrowth } from '../materials'
import { failed, ok, type Result } from '../outcome'
import type { Profile } from '../profile'
import { basinOf, type ChannelWater, DEFAULT_MEDIUM_G_PER_L, type WaterPlan } from '../reservoir'
import { mm } from '../units'
import { newtonsPerMm } from './beam'
import { channelFeet } from './channel-feet'
import { channelMasses, type Mass, onSill } from './channel-mass'
import { channelSag } from './channel-sag'
import type { StructureFinding, StructureProblem } from './codes'
import { WINDOW_RISE_C } from './limits'
import type { ChannelLoad } from './load'
import { loadFindings } from './load-findings'
import type { LoadInput } from './load-input'
import { edgeDistance, supportPolygon, tipAngleDeg } from './tipping'

export interface LoadedChannel {
  readonly load: ChannelLoad
  readonly findings: readonly StructureFinding[]
}

/** Weights, mass centre, sag, tipping and growth with heat of one channel, and what is to be minded about them. */
export function channelLoad(input: LoadInput): Result<LoadedChannel, StructureProblem> {
  const { channel, layout, fits, index, sill, size, channelWater, water } = input
  const profile = index.profiles.get(channel.profileId)
  if (!profile) {
    return failed({
      code: 'load-part-missing',
      figures: { kind: 'profile', partId: channel.profileId },
      where: { channelId: channel.id }
    })
  }
  const basin = input.basin ?? basinOf(channel, layout, fits, sill)
  const masses = channelMasses(channel, layout, fits, index, {
    litres: channelWater.litres,
    levelMm: channelWater.levelMm,
    celsius: water.celsius,
    mediumGPerL: water.mediumGPerL ?? DEFAULT_MEDIUM_G_PER_L,
    basin
  })
  if (!masses.ok) return masses
  const { empty, filled, grown } = masses.value
  const polygon = supportPolygon(channelFeet(channel, layout), size)
  const fallDeg = (Math.atan(Math.hypot(sill.fallAlongMmPerM, sill.fallAcrossMmPerM) / 1000) * 180) / Math.PI
  const edgesMm = {
    empty: edgeOf(channel, empty, polygon),
    filled: edgeOf(channel, filled, polygon),
    grown: edgeOf(channel, grown, polygon)
  }
  const load: ChannelLoad = {
    channelId: channel.id,
    emptyG: empty.grams,
    filledG: filled.grams,
    grownG: grown.grams,
    centre: onSill(channel, grown),
    newtonsPerMetre: newtonsPerMm(grown.grams / Math.max(layout.overallLengthMm, 1)) * 1000,
    sag: channelSag(channel, layout, profile, grown.grams, gapToSpare(channelWater, water)),
    tipDeg: {
      empty: tip(edgesMm.empty, empty, fallDeg),
      filled: tip(edgesMm.filled, filled, fallDeg),
      grown: tip(edgesMm.grown, grown, fallDeg)
    },
    thermalGrowthMm: growthOf(profile, layout)
  }
  return ok({ load, findings: loadFindings(input, load, edgesMm) })
}

function edgeOf(channel: Channel, mass: Mass, polygon: ReturnType<typeof supportPolygon>): number | null {
  const { xMm, yMm } = onSill(channel, mass)
  return edgeDistance(polygon, xMm, yMm)
}

function tip(edgeMm: number | null, mass: Mass, fallDeg: number): number {
  if (edgeMm === null || edgeMm <= 0) return 0
  const angle = tipAngleDeg(mm(edgeMm), mm(Math.max(mass.zMm, 1e-3)))
  return angle.ok ? Math.max(0, angle.value - fallDeg) : 0
}

function gapToSpare(channelWater: ChannelWater, water: WaterPlan): number | null {
  return channelWater.leastGapMm === null ? null : channelWater.leastGapMm - water.stageGapsMm[water.stage]
}

function growthOf(profile: Profile, layout: ChannelLayout): number {
  return thermalGrowth(mm(layout.overallLengthMm), WINDOW_RISE_C, material(profile.material).expansionPerC)
}
