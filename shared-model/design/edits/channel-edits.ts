import { type Channel, direction, type Heading, mirrorChannels as mirroredOnSill } from '../../layout'
import { ok } from '../../outcome'
import type { EndClosure } from '../../parts'
import type { Profile } from '../../profile'
import type { Design } from '../design'
import { nextId, withItem } from '../ids'
import { checkChannel, type Edited, notFound, withChannel, withChannels } from './edit'

export interface NewChannel {
  readonly profile: Profile
  readonly datumClosure: EndClosure
  readonly farClosure: EndClosure
  readonly xMm: number
  readonly yMm: number
  readonly lengthMm: number
  readonly heading?: Heading
  readonly turned?: boolean
  readonly fillShare?: number
  readonly name?: string
}

/** An id that no channel has and that no mark made at the bench still names: a new channel is not cut already. */
const freeChannelId = (design: Design, channels: readonly Channel[]): string => {
  const { pins, bars } = design.atBench ?? { pins: [], bars: [] }
  const named = [...pins, ...bars.flatMap(({ pieces }) => pieces)].map(({ pieceId }) => ({
    id: pieceId.slice(0, pieceId.lastIndexOf('.'))
  }))
  return nextId('c', [...channels, ...named])
}

/** A new channel without sites, the last one of the list; its profile and closures are copied into the design. */
export const addChannel = (design: Design, made: NewChannel): Edited<Design> => {
  const id = freeChannelId(design, design.channels)
  const channel: Channel = {
    id,
    name: made.name ?? '',
    profileId: made.profile.id,
    turned: made.turned ?? false,
    xMm: made.xMm,
    yMm: made.yMm,
    heading: made.heading ?? 0,
    lengthMm: made.lengthMm,
    datumClosureId: made.datumClosure.id,
    farClosureId: made.farClosure.id,
    supports: [],
    sites: [],
    openings: [],
    fillShare: made.fillShare ?? 0.6
  }
  const checked = checkChannel(channel)
  if (!checked.ok) return checked
  const closures = withItem(withItem(design.parts.closures, made.datumClosure), made.farClosure)
  const parts = { ...design.parts, profiles: withItem(design.parts.profiles, made.profile), closures }
  return ok({ ...design, parts, channels: [...design.channels, channel] })
}

export const moveChannels = (design: Design, ids: readonly string[], dxMm: number, dyMm: number): Edited<Design> =>
  withChannels(design, ids, (channel) => ok({ ...channel, xMm: channel.xMm + dxMm, yMm: channel.yMm + dyMm }))

/** Puts the datum end at this place. */
export const placeChannel = (design: Design, id: string, xMm: number, yMm: number): Edited<Design> =>
  withChannel(design, id, (channel) => ok({ ...channel, xMm, yMm }))

/** Turns a channel about the middle of its length. */
export const turnChannel = (design: Design, id: string, heading: Heading): Edited<Design> =>
  withChannel(design, id, (channel) => {
    const half = channel.lengthMm / 2
    const from = direction(channel.heading)
    const to = direction(heading)
    return ok({
      ...channel,
      heading,
      xMm: channel.xMm + half * (from.dx - to.dx),
      yMm: channel.yMm + half * (from.dy - to.dy)
    })
  })

/** Lays a channel on its other side, or back. */
export const layOnSide = (design: Design, id: string, turned: boolean): Edited<Design> =>
  withChannel(design, id, (channel) => ok({ ...channel, turned }))

/**
 * A new cut length. Pulling the far end leaves the datum end and all positions; pulling the datum end moves it, and the
 * positions with it, so that every hole stays where it is on the sill. A hole that would lie beyond an end is refused.
 */
export const resizeChannel = (design: Design, id: string, lengthMm: number, pulled: 'far' | 'datum'): Edited<Design> =>
  withChannel(design, id, (channel) => {
    if (pulled === 'far') return ok({ ...channel, lengthMm })
    const grownMm = lengthMm - channel.lengthMm
    const run = direction(channel.heading)
    const shift = <T extends { readonly atMm: number }>(item: T): T => ({ ...item, atMm: item.atMm + grownMm })
    return ok({
      ...channel,
      lengthMm,
      xMm: channel.xMm - run.dx * grownMm,
      yMm: channel.yMm - run.dy * grownMm,
      sites: channel.sites.map(shift),
      openings: channel.openings.map((each) =>
        each.face === 'datum-end' || each.face === 'far-end' ? each : shift(each)
      ),
      supports: channel.supports.map(shift)
    })
  })

/** Copies, moved by this much; they are the last ones of the list, in the order of `ids`. */
export const copyChannels = (design: Design, ids: readonly string[], dxMm: number, dyMm: number): Edited<Design> => {
  let channels = design.channels
  for (const id of ids) {
    const channel = design.channels.find((each) => each.id === id)
    if (channel === undefined) return notFound('channel', id)
    const copy = { ...channel, id: freeChannelId(design, channels), xMm: channel.xMm + dxMm, yMm: channel.yMm + dyMm }
    const checked = checkChannel(copy)
    if (!checked.ok) return checked
    channels = [...channels, copy]
  }
  return ok({ ...design, channels })
}

/** Mirrors channels left for right about the middle of the ground they cover together. */
export const mirrorChannels = (design: Design, ids: readonly string[]): Edited<Design> => {
  const ends = design.channels
    .filter((each) => ids.includes(each.id))
    .flatMap((each) => [each.xMm, each.xMm + direction(each.heading).dx * each.lengthMm])
  const axisMm = (Math.min(...ends) + Math.max(...ends)) / 2
  return withChannels(design, ids, (channel) => ok(mirroredOnSill([channel], 2 * axisMm)[0] ?? channel))
}

/** The whole design mirrored left for right: the sill, what stands on it, and what is noted on it. */
export const mirrorDesign = (design: Design): Design => {
  const lengthMm = Math.min(...design.sill.lengthsMm)
  const edge = { left: 'right', right: 'left', front: 'front', back: 'back' } as const
  const anchor = (each: Design['dimensions'][number]['from']) =>
    each.kind === 'sill' ? { ...each, edge: edge[each.edge] } : each
  return {
    ...design,
    sill: {
      ...design.sill,
      fallAlongMmPerM: -design.sill.fallAlongMmPerM,
      obstacles: design.sill.obstacles.map((each) => ({ ...each, xMm: lengthMm - each.xMm - each.lengthMm }))
    },
    channels: mirroredOnSill(design.channels, lengthMm),
    dimensions: design.dimensions.map((each) => ({ ...each, from: anchor(each.from), to: anchor(each.to) })),
    notes: design.notes.map((each) => ({ ...each, xMm: lengthMm - each.xMm }))
  }
}

/** Takes channels away, with the dimensions that are pinned to them. */
export const deleteChannels = (design: Design, ids: readonly string[]): Edited<Design> => {
  const missing = ids.find((id) => !design.channels.some((each) => each.id === id))
  if (missing !== undefined) return notFound('channel', missing)
  const gone = new Set(ids)
  return ok({
    ...design,
    channels: design.channels.filter((each) => !gone.has(each.id)),
    dimensions: design.dimensions.filter((each) =>
      [each.from, each.to].every((end) => end.kind === 'sill' || !gone.has(end.channelId))
    )
  })
}

export type ChannelChanges = Partial<
  Pick<Channel, 'name' | 'fillShare' | 'turned' | 'profileId' | 'datumClosureId' | 'farClosureId'>
>

/** Sets fields of one or several channels at once. */
export const editChannels = (design: Design, ids: readonly string[], changes: ChannelChanges): Edited<Design> =>
  withChannels(design, ids, (channel) => ok({ ...channel, ...changes }))

/** Another profile and closures that go with it for these channels; both are copied into the design. */
export const changeProfile = (
  design: Design,
  ids: readonly string[],
  profile: Profile,
  closure: EndClosure
): Edited<Design> => {
  const parts = {
    ...design.parts,
    profiles: withItem(design.parts.profiles, profile),
    closures: withItem(design.parts.closures, closure)
  }
  return editChannels({ ...design, parts }, ids, {
    profileId: profile.id,
    datumClosureId: closure.id,
    farClosureId: closure.id
  })
}

/** Another closure on one or both ends. */
export const changeClosure = (
  design: Design,
  ids: readonly string[],
  ends: readonly ('datum' | 'far')[],
  closure: EndClosure
): Edited<Design> => {
  const parts = { ...design.parts, closures: withItem(design.parts.closures, closure) }
  return editChannels({ ...design, parts }, ids, {
    ...(ends.includes('datum') ? { datumClosureId: closure.id } : {}),
    ...(ends.includes('far') ? { farClosureId: closure.id } : {})
  })
}
