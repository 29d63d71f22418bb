import type { ServiceOpening, Support } from '../../layout'
import { ok } from '../../outcome'
import type { HoleSaw } from '../../parts'
import type { Design } from '../design'
import { changed, nextId, withItem } from '../ids'
import { type Edited, notFound, withChannel } from './edit'

/** A new service opening, the last of the list; `saw` null: a twist drill of the diameter. */
export const addOpening = (
  design: Design,
  channelId: string,
  opening: Omit<ServiceOpening, 'id' | 'sawId'>,
  saw: HoleSaw | null
): Edited<Design> => {
  const saws = saw === null ? design.parts.saws : withItem(design.parts.saws, saw)
  return withChannel({ ...design, parts: { ...design.parts, saws } }, channelId, (channel) =>
    ok({
      ...channel,
      openings: [...channel.openings, { ...opening, sawId: saw?.id ?? null, id: nextId('o', channel.openings) }]
    })
  )
}

export const editOpening = (
  design: Design,
  channelId: string,
  openingId: string,
  changes: Partial<Omit<ServiceOpening, 'id'>>
): Edited<Design> =>
  withChannel(design, channelId, (channel) =>
    channel.openings.some((each) => each.id === openingId)
      ? ok({ ...channel, openings: changed(channel.openings, openingId, (each) => ({ ...each, ...changes })) })
      : notFound('opening', openingId)
  )

export const deleteOpening = (design: Design, channelId: string, openingId: string): Edited<Design> =>
  withChannel(design, channelId, (channel) =>
    channel.openings.some((each) => each.id === openingId)
      ? ok({ ...channel, openings: channel.openings.filter((each) => each.id !== openingId) })
      : notFound('opening', openingId)
  )

/** A new foot or block, the last of the list. */
export const addSupport = (design: Design, channelId: string, support: Omit<Support, 'id'>): Edited<Design> =>
  withChannel(design, channelId, (channel) =>
    ok({ ...channel, supports: [...channel.supports, { ...support, id: nextId('f', channel.supports) }] })
  )

export const editSupport = (
  design: Design,
  channelId: string,
  supportId: string,
  changes: Partial<Omit<Support, 'id'>>
): Edited<Design> =>
  withChannel(design, channelId, (channel) =>
    channel.supports.some((each) => each.id === supportId)
      ? ok({ ...channel, supports: changed(channel.supports, supportId, (each) => ({ ...each, ...changes })) })
      : notFound('support', supportId)
  )

export const deleteSupport = (design: Design, channelId: string, supportId: string): Edited<Design> =>
  withChannel(design, channelId, (channel) =>
    channel.supports.some((each) => each.id === supportId)
      ? ok({ ...channel, supports: channel.supports.filter((each) => each.id !== supportId) })
      : notFound('support', supportId)
  )
