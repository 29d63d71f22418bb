import type { Design } from '../design'
import { type Channel, type ChannelLayout, channelFindings, channelLayout, type LaidOut } from '../layout'
import { failed, ok, type Result } from '../outcome'
import { sectionOf } from '../profile'
import { type ChannelWater, channelWater } from '../reservoir'
import { channelSeats, type SeatedChannel, type SeatFit, type SeatingProblem } from '../seating'
import { type ChannelLoad, channelLoad } from '../structure'
import type { PlanFinding, PlanProblem } from './codes'
import { keepEach } from './kept'
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

type Seated = Result<SeatedChannel, SeatingProblem> | null
type Worked = Result<ChannelPart, PlanProblem>

const keptSeats = keepEach<Channel, Seated>()
const keptParts = keepEach<Channel, Worked>()

/**
 * The part of each channel; kept as long as the channel and what it shares are the same objects. How its sites sit is kept
 * as long as its sites are, wherever it stands.
 */
export const channelParts = (design: Design, shared: Shared): readonly Worked[] => {
  const { channels } = design
  const seats = keptSeats(
    channels,
    ({ id, sites, profileId, turned }) => [id, sites, profileId, turned, shared],
    (channel) => seatedIn(channel, shared)
  )
  return keptParts(
    channels,
    (channel, at) => [channel, seats[at], shared],
    (channel, at) => workedOut(channel, seats[at] ?? null, shared)
  )
}

/** null: there is no such profile. */
const seatedIn = (channel: Channel, { index, saws }: Shared): Seated => {
  const profile = index.profiles.get(channel.profileId)
  return profile === undefined ? null : channelSeats(channel, sectionOf(profile, channel.turned), index, saws)
}

const workedOut = (channel: Channel, seated: Seated, shared: Shared): Worked => {
  const { index, sill, size, water, growthShare, saws, cups, closuresOnHand } = shared
  if (seated === null)
    return failed({
      code: 'channel-part-missing',
      figures: { kind: 'profile', partId: channel.profileId },
      where: { channelId: channel.id, field: `channels.${channel.id}.profileId` }
    })
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
    water,
    basin: watered.value.basin
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
