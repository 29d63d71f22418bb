import type { DrillRow } from '../bench'
import type { Design } from '../design'
import type { Channel } from '../layout'
import type { Collar, Cup, HoleSaw, PlantCollar, Riser } from '../parts'
import type { ChannelPlan, Plan } from '../plan'
import type { Profile } from '../profile'
import type { Seat } from '../seating'

/** A channel as drawn, with what the plan says of it. */
export interface Built {
  readonly channel: Channel
  readonly plan: ChannelPlan
  readonly profile: Profile
  /** Length that is sawn: the piece's, set on the graduation; the drawn length where no piece is planned. */
  readonly cutLengthMm: number
}

const withId = <T extends { readonly id: string }>(things: readonly T[], id: string): T | undefined =>
  things.find((thing) => thing.id === id)

/** The channels of a plan in the order of their marks, each with its design and profile. */
export const builtChannels = (plan: Plan, design: Design): readonly Built[] =>
  plan.channels.flatMap((channelPlan): Built[] => {
    const channel = withId(design.channels, channelPlan.channelId)
    const profile = channel === undefined ? undefined : withId(design.parts.profiles, channel.profileId)
    if (channel === undefined || profile === undefined) return []
    const piece = plan.pieces.find(({ channelId }) => channelId === channel.id)
    return [{ channel, plan: channelPlan, profile, cutLengthMm: piece?.lengthMm ?? channelPlan.layout.cutLengthMm }]
  })

/** A channel's holes, each once however many units are drilled. */
export const openedAt = (plan: Plan, { channel }: Built): readonly DrillRow[] => {
  const seen = new Set<string>()
  return plan.bench.holes.filter(({ channelId, holeId }) => {
    if (channelId !== channel.id || seen.has(holeId)) return false
    seen.add(holeId)
    return true
  })
}

export const seatOf = (design: Design, siteId: string, channel: Channel): Seat | undefined => {
  const site = withId(channel.sites, siteId)
  return site === undefined ? undefined : withId(design.seats, site.seatId)
}

export type StackPart =
  | { readonly kind: 'riser'; readonly part: Riser }
  | { readonly kind: 'collar'; readonly part: Collar }
  | { readonly kind: 'cup'; readonly part: Cup }
  | { readonly kind: 'plant-collar'; readonly part: PlantCollar }

/** The parts of a seat from the hole up; parts the design does not hold are left out. */
export const stackParts = (design: Design, seat: Seat): readonly StackPart[] =>
  seat.stack.flatMap((item): StackPart[] => {
    switch (item.kind) {
      case 'riser': {
        const part = withId(design.parts.risers, item.partId)
        return part === undefined ? [] : [{ kind: 'riser', part }]
      }
      case 'collar': {
        const part = withId(design.parts.collars, item.partId)
        return part === undefined ? [] : [{ kind: 'collar', part }]
      }
      case 'cup': {
        const part = withId(design.parts.cups, item.partId)
        return part === undefined ? [] : [{ kind: 'cup', part }]
      }
      case 'plant-collar': {
        const part = withId(design.parts.plantCollars, item.partId)
        return part === undefined ? [] : [{ kind: 'plant-collar', part }]
      }
    }
    return []
  })

export const sawOf = (design: Design, sawId: string): HoleSaw | undefined => withId(design.parts.saws, sawId)
export const cropName = (design: Design, cropId: string | null): string =>
  cropId === null ? '' : (withId(design.crops, cropId)?.name ?? cropId)
export const closureName = (design: Design, closureId: string): string =>
  withId(design.parts.closures, closureId)?.name ?? closureId
export const profileName = (design: Design, profileId: string): string =>
  withId(design.parts.profiles, profileId)?.name ?? profileId
