import { type Channel, type Site, spreadEvenly } from '../../layout'
import { failed, ok } from '../../outcome'
import type { Design } from '../design'
import { nextId } from '../ids'
import { type Edited, notFound, withChannel } from './edit'
import { type Row, rowByCount, rowByPitch, siteRoom } from './site-row'

/** What sits in new sites. */
export interface SiteContents {
  readonly seatId: string
  readonly cropId: string | null
}

/** One more site; the last of the list. */
export const addSite = (design: Design, channelId: string, atMm: number, holds: SiteContents): Edited<Design> =>
  withChannel(design, channelId, (channel) =>
    ok({ ...channel, sites: [...channel.sites, { id: nextId('s', channel.sites), atMm, ...holds, locked: false }] })
  )

/** Sites at this pitch, as many as there is room for; locked sites stay, the others are put in anew. */
export const sitesByPitch = (
  design: Design,
  channelId: string,
  row: Row & { readonly pitchMm: number },
  holds: SiteContents
): Edited<Design> =>
  withChannel(design, channelId, (channel) => {
    const room = siteRoom(design, channel, holds.seatId, row.endMm)
    if (!room.ok) return room
    const made = rowByPitch(room.value, row)
    return made.ok ? ok(withRow(channel, made.value, holds)) : made
  })

/** This many sites, at the pitch that fills the room or at the pitch given; locked sites stay. */
export const sitesByCount = (
  design: Design,
  channelId: string,
  row: Row & { readonly count: number; readonly pitchMm?: number },
  holds: SiteContents
): Edited<Design> =>
  withChannel(design, channelId, (channel) => {
    const room = siteRoom(design, channel, holds.seatId, row.endMm)
    if (!room.ok) return room
    const made = rowByCount(room.value, row)
    return made.ok ? ok(withRow(channel, made.value, holds)) : made
  })

/** Puts one site at this distance from the datum end. A locked site stays. */
export const moveSite = (design: Design, channelId: string, siteId: string, atMm: number): Edited<Design> =>
  withSites(design, channelId, [siteId], (site) => (site.locked ? site : { ...site, atMm }))

/** Moves several sites along the channel by the same distance; locked ones stay. */
export const moveSites = (
  design: Design,
  channelId: string,
  siteIds: readonly string[],
  byMm: number
): Edited<Design> =>
  withSites(design, channelId, siteIds, (site) => (site.locked ? site : { ...site, atMm: site.atMm + byMm }))

export const lockSites = (
  design: Design,
  channelId: string,
  siteIds: readonly string[],
  locked: boolean
): Edited<Design> => withSites(design, channelId, siteIds, (site) => ({ ...site, locked }))

/** Sets what sits in sites. */
export const editSites = (
  design: Design,
  channelId: string,
  siteIds: readonly string[],
  changes: Partial<SiteContents>
): Edited<Design> => withSites(design, channelId, siteIds, (site) => ({ ...site, ...changes }))

/** Takes sites away, with the dimensions that are pinned to them. */
export const deleteSites = (design: Design, channelId: string, siteIds: readonly string[]): Edited<Design> => {
  const gone = new Set(siteIds)
  const made = withChannel(design, channelId, (channel) => {
    const missing = siteIds.find((id) => !channel.sites.some((each) => each.id === id))
    if (missing !== undefined) return notFound('site', missing)
    return ok({ ...channel, sites: channel.sites.filter((each) => !gone.has(each.id)) })
  })
  if (!made.ok) return made
  const dimensions = made.value.dimensions.filter((each) =>
    [each.from, each.to].every((end) => end.kind !== 'site' || end.channelId !== channelId || !gone.has(end.siteId))
  )
  return ok({ ...made.value, dimensions })
}

/** Spreads the free sites evenly between the locked ones and the ends; their order along the channel is kept. */
export const spreadSites = (design: Design, channelId: string): Edited<Design> =>
  withChannel(design, channelId, (channel) => {
    const [first] = channel.sites
    if (first === undefined) return ok(channel)
    let leastEndMm = 0
    for (const seatId of new Set(channel.sites.map((each) => each.seatId))) {
      const room = siteRoom(design, channel, seatId)
      if (!room.ok) return room
      leastEndMm = Math.max(leastEndMm, room.value.leastEndMm)
    }
    return ok({ ...channel, sites: spreadEvenly(channel.sites, { lengthMm: channel.lengthMm, leastEndMm }) })
  })

/**
 * Gives a channel the positions of another one's sites, in order; sites beyond the other's number are added. Positions
 * that come nearer to a shorter channel's far end than the other keeps to its own ends are left out.
 */
export const matchSites = (design: Design, channelId: string, likeId: string): Edited<Design> => {
  const like = design.channels.find((each) => each.id === likeId)
  if (like === undefined) return notFound('channel', likeId)
  const ats = sortedAts(like.sites)
  const endMm = Math.min(ats[0] ?? 0, like.lengthMm - (ats.at(-1) ?? 0))
  return likeNeighbour(design, channelId, likeId, (atMm, lengthMm) =>
    atMm <= lengthMm - endMm + SAME_PLACE_MM ? atMm : null
  )
}

/** Gives a channel the neighbour's positions moved by half its pitch, so that plants stand in the gaps. */
export const staggerSites = (design: Design, channelId: string, neighbourId: string): Edited<Design> => {
  const ats = sortedAts(design.channels.find((each) => each.id === neighbourId)?.sites ?? [])
  const first = ats[0]
  const second = ats[1]
  if (first === undefined || second === undefined) return notFound('pair of sites in channel', neighbourId)
  const half = (second - first) / 2
  return likeNeighbour(design, channelId, neighbourId, (atMm, lengthMm) => {
    const moved = atMm + half
    return moved <= lengthMm - first ? moved : null
  })
}

const likeNeighbour = (
  design: Design,
  channelId: string,
  likeId: string,
  place: (atMm: number, lengthMm: number) => number | null
): Edited<Design> =>
  withChannel(design, channelId, (channel) => {
    const like = design.channels.find((each) => each.id === likeId)
    if (like === undefined) return notFound('channel', likeId)
    const ats = sortedAts(like.sites).flatMap((atMm) => place(atMm, channel.lengthMm) ?? [])
    const beyond = ats.find((atMm) => atMm > channel.lengthMm)
    if (beyond !== undefined)
      return failed({
        code: 'edit-no-room',
        figures: { field: `channels.${channelId}.lengthMm`, wanted: beyond, room: channel.lengthMm }
      })
    const free = [...channel.sites].filter((each) => !each.locked).sort((a, b) => a.atMm - b.atMm)
    const model = free[0] ?? like.sites[0]
    if (model === undefined) return ok(channel)
    return ok(withRow(channel, ats, { seatId: model.seatId, cropId: model.cropId }))
  })

/** The free sites take these positions in order and keep what sits in them; missing ones are added, spare ones go. */
const withRow = (channel: Channel, ats: readonly number[], holds: SiteContents): Channel => {
  const locked = channel.sites.filter((each) => each.locked)
  const free = channel.sites.filter((each) => !each.locked).sort((a, b) => a.atMm - b.atMm)
  const open = ats.filter((atMm) => !locked.some((each) => Math.abs(each.atMm - atMm) < SAME_PLACE_MM))
  let sites: readonly Site[] = locked
  open.forEach((atMm, k) => {
    const old = free[k]
    const id = old?.id ?? nextId('s', [...channel.sites, ...sites])
    sites = [...sites, { id, atMm, ...holds, locked: false }]
  })
  return { ...channel, sites: [...sites].sort((a, b) => a.atMm - b.atMm) }
}

/** A locked site nearer than this to a place in the row takes it. */
const SAME_PLACE_MM = 0.05

const sortedAts = (sites: readonly Site[]): readonly number[] => sites.map((each) => each.atMm).sort((a, b) => a - b)

const withSites = (
  design: Design,
  channelId: string,
  siteIds: readonly string[],
  change: (site: Site) => Site
): Edited<Design> =>
  withChannel(design, channelId, (channel) => {
    const missing = siteIds.find((id) => !channel.sites.some((each) => each.id === id))
    if (missing !== undefined) return notFound('site', missing)
    const chosen = new Set(siteIds)
    return ok({ ...channel, sites: channel.sites.map((site) => (chosen.has(site.id) ? change(site) : site)) })
  })
