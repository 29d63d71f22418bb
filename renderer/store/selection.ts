/** What is chosen on the board: channels, and sites or openings of one channel. */
export interface Selection {
  readonly channelIds: readonly string[]
  readonly siteIds: readonly string[]
  readonly openingId: string | null
  /** A pinned dimension or note. */
  readonly pinnedId: string | null
}

export const NOTHING: Selection = { channelIds: [], siteIds: [], openingId: null, pinnedId: null }

export const chooseChannel = (channelId: string): Selection => ({ ...NOTHING, channelIds: [channelId] })

export const chooseSite = (channelId: string, siteId: string): Selection => ({
  ...NOTHING,
  channelIds: [channelId],
  siteIds: [siteId]
})

export const chooseOpening = (channelId: string, openingId: string): Selection => ({
  ...chooseChannel(channelId),
  openingId
})

export const choosePinned = (pinnedId: string): Selection => ({ ...NOTHING, pinnedId })

/** Adds a channel to the choice or takes it out. */
export const toggleChannel = (selection: Selection, channelId: string): Selection => ({
  ...NOTHING,
  channelIds: selection.channelIds.includes(channelId)
    ? selection.channelIds.filter((id) => id !== channelId)
    : [...selection.channelIds, channelId]
})

/** Adds a site of the same channel to the choice or takes it out; a site of another channel starts a new choice. */
export const toggleSite = (selection: Selection, channelId: string, siteId: string): Selection =>
  selection.channelIds.length === 1 && selection.channelIds[0] === channelId
    ? {
        ...NOTHING,
        channelIds: [channelId],
        siteIds: selection.siteIds.includes(siteId)
          ? selection.siteIds.filter((id) => id !== siteId)
          : [...selection.siteIds, siteId]
      }
    : chooseSite(channelId, siteId)

interface Present {
  readonly id: string
  readonly sites: readonly { readonly id: string }[]
  readonly openings: readonly { readonly id: string }[]
}

interface PresentIn {
  readonly channels: readonly Present[]
  readonly dimensions: readonly { readonly id: string }[]
  readonly notes: readonly { readonly id: string }[]
}

/** The choice without what is no longer there. */
export function stillThere(selection: Selection, { channels, dimensions, notes }: PresentIn): Selection {
  const kept = channels.filter((channel) => selection.channelIds.includes(channel.id))
  const only = kept.length === 1 ? kept[0] : undefined
  const siteIds = selection.siteIds.filter((id) => only?.sites.some((site) => site.id === id))
  const openingId = only?.openings.some((opening) => opening.id === selection.openingId) ? selection.openingId : null
  const pinned = [...dimensions, ...notes].some(({ id }) => id === selection.pinnedId)
  const pinnedId = pinned ? selection.pinnedId : null
  const same =
    pinnedId === selection.pinnedId &&
    kept.length === selection.channelIds.length &&
    siteIds.length === selection.siteIds.length &&
    openingId === selection.openingId
  if (same) return selection
  return {
    channelIds: selection.channelIds.filter((id) => kept.some((each) => each.id === id)),
    siteIds,
    openingId,
    pinnedId
  }
}
