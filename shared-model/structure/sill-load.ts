import type { Sill, SillSize } from '../layout'
import { gramsFromPounds, mmFromInches } from '../units'
import { newtonsPerMm } from './beam'
import type { StructureFinding } from './codes'
import { liftingLimit, OVER_SILL } from './lifting-limit'
import { CARRY_HEAVY_LB, CARRY_LONG_IN, LIFT_CONSTANT_LB, LIFT_OVER_SILL_LB } from './limits'
import type { ChannelLoad, SillLoad } from './load'

/**
 * All channels on the sill together: weights, their common mass centre, load to the metre of sill, share of the user's own
 * limit, and how the heaviest may be carried. A sill limit is only ever the user's own figure: no published one exists.
 */
export function sillLoad(
  channels: readonly { readonly load: ChannelLoad; readonly overallLengthMm: number }[],
  sill: Sill,
  size: SillSize
): { readonly load: SillLoad; readonly findings: readonly StructureFinding[] } {
  const sum = { emptyG: 0, filledG: 0, grownG: 0, x: 0, y: 0, z: 0 }
  for (const { load } of channels) {
    sum.emptyG += load.emptyG
    sum.filledG += load.filledG
    sum.grownG += load.grownG
    sum.x += load.grownG * load.centre.xMm
    sum.y += load.grownG * load.centre.yMm
    sum.z += load.grownG * load.centre.zMm
  }
  const { emptyG, filledG, grownG } = sum
  const share = sill.loadLimitKg === null || sill.loadLimitKg <= 0 ? null : grownG / 1000 / sill.loadLimitKg
  const carried = carry(channels)
  const load: SillLoad = {
    emptyG,
    filledG,
    grownG,
    centre: grownG > 0 ? { xMm: sum.x / grownG, yMm: sum.y / grownG, zMm: sum.z / grownG } : { xMm: 0, yMm: 0, zMm: 0 },
    newtonsPerMetre: newtonsPerMm(grownG / Math.max(size.lengthMm, 1)) * 1000,
    shareOfLimit: share,
    lift: carried.lift
  }
  return { load, findings: [...limitFindings(sill, grownG, share), ...carried.findings] }
}

function limitFindings(sill: Sill, grownG: number, share: number | null): readonly StructureFinding[] {
  const where = { field: 'sill.loadLimitKg' }
  const loadKg = grownG / 1000
  if (share === null || sill.loadLimitKg === null) {
    return [{ code: 'no-sill-limit', severity: 'note', figures: { loadKg }, where, source: 'sill-no-published-limit' }]
  }
  if (share <= 1) return []
  return [
    { code: 'over-sill-limit', severity: 'stop', figures: { loadKg, limitKg: sill.loadLimitKg }, where, source: 'user' }
  ]
}

function carry(channels: readonly { readonly load: ChannelLoad; readonly overallLengthMm: number }[]): {
  readonly lift: SillLoad['lift']
  readonly findings: readonly StructureFinding[]
} {
  const limit = liftingLimit(OVER_SILL)
  const recommendedG = limit.ok ? limit.value : 0
  const most = gramsFromPounds(LIFT_CONSTANT_LB)
  const reach = gramsFromPounds(LIFT_OVER_SILL_LB)
  let heaviest = channels[0]
  for (const one of channels) if (one.load.filledG > (heaviest?.load.filledG ?? 0)) heaviest = one
  const heaviestFilledG = heaviest?.load.filledG ?? 0
  const long = channels.find(
    ({ load, overallLengthMm }) =>
      overallLengthMm > mmFromInches(CARRY_LONG_IN) && load.filledG > gramsFromPounds(CARRY_HEAVY_LB)
  )
  const findings: StructureFinding[] = []
  const where = { channelId: heaviest?.load.channelId ?? '', field: 'channels' }
  if (heaviestFilledG > most) {
    findings.push({
      code: 'not-by-one-person',
      severity: 'warn',
      figures: { filledG: heaviestFilledG, mostG: most },
      where,
      source: 'niosh-lifting'
    })
    return { lift: { recommendedG, heaviestFilledG, carryFilled: 'not-by-one-person' }, findings }
  }
  const inPlace = heaviestFilledG > reach ? heaviest : long
  if (!inPlace) return { lift: { recommendedG, heaviestFilledG, carryFilled: 'yes' }, findings }
  findings.push({
    code: 'fill-in-place',
    severity: 'note',
    figures: { filledG: inPlace.load.filledG, recommendedG, lengthMm: inPlace.overallLengthMm },
    where: { channelId: inPlace.load.channelId, field: 'channels' },
    source: heaviestFilledG > reach ? 'niosh-lifting' : 'carry-filled'
  })
  return { lift: { recommendedG, heaviestFilledG, carryFilled: 'fill-in-place' }, findings }
}
