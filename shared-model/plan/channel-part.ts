import type { Design } from '../design'
import { type Channel, type ChannelLayout, channelFindings, channelLayout, type LaidOut } from '../layout'
import { failed, ok, type Result } from '../outcome'
import { sectionOf } from '../profile'
import { type ChannelWater, channelWater } from '../reservoir'
import { channelSeats, type SeatFit } from '../seating'
import { type ChannelLoad, channelLoad } from '../structure'
import type { PlanFinding, PlanProblem } from './codes'
import type { Shared } from './shared'

/** All that follows from one channel and what every channel shares. */
export interface ChannelPart {
  readonly laid: LaidOut
  readonly seats: readonly SeatFit[]
  readonly layout: ChannelLayout
  readonly water: ChannelWater
  readonly load: ChannelLoad
  readonly findings: readonly PlanFinding[]
}

interface Kept {
  readonly shared: Shared
  readonly part: Result<ChannelPart, PlanProblem>
}

const keptByChannel = new WeakMap<Channel, Kept>()

/** The part of one channel; kept as long as the channel and what it shares are the same objects. */
export const channelPart = (channel: Channel, shared: Shared): Result<ChannelPart, PlanProblem> => {
  const kept = keptByChannel.get(channel)
  if (kept?.shared === shared) return kept.part
  const part = workedOut(channel, shared)
  keptByChannel.set(channel, { shared, part })
  return part
}

/** The part worked out afresh. */
const workedOut = (channel: Channel, shared: Shared): Result<ChannelPart, PlanProblem> => {
  const { index, sill, size, water, growthShare, saws, cups, closuresOnHand } = shared
  const profile = index.profiles.get(channel.profileId)
  if (profile === undefined)
    return failed({
      code: 'channel-part-missing',
      figures: { kind: 'profile', partId: channel.profileId },
      where: { channelId: channel.id, field: `channels.${channel.id}.profileId` }
    })
  const seated = channelSeats(channel, sectionOf(profile, channel.turned), index, saws)
  if (!seated.ok) return seated
  const { fits } = seated.value
  const layout = channelLayout(channel, fits, index, growthShare)
  if (!layout.ok) return layout
  const watered = channelWater({
    channel,
    layout: layout.value,
    fits,
    index,
    sill,
    water,
    cupsOnHand: cups,
    sawsOnHand: saws
  })
  if (!watered.ok) return watered
  const loaded = channelLoad({
    channel,
    layout: layout.value,
    fits,
    index,
    sill,
    size,
    channelWater: watered.value.water,
    water
  })
  if (!loaded.ok) return loaded
  const laid: LaidOut = { channel, layout: layout.value, fits }
  return ok({
    laid,
    seats: fits,
    layout: layout.value,
    water: watered.value.water,
    load: loaded.value.load,
    findings: [
      ...channelFindings(laid, sill, size, index, closuresOnHand),
      ...seated.value.findings,
      ...watered.value.findings,
      ...loaded.value.findings
    ]
  })
}

/** Number of each channel on picture, piece and drill sheet, by its place in the list. */
export const marksOf = (design: Design): ReadonlyMap<string, string> =>
  new Map(design.channels.map(({ id }, k) => [id, `${k + 1}`]))
