import type { Channel } from '../../shared-model/layout'
import type { ChannelPlan } from '../../shared-model/plan'
import type { Selection } from '../store/selection'
import type { ChannelPicture } from './paint/channel-picture'

const NO_IDS: readonly string[] = []

interface Kept {
  readonly channel: Channel
  readonly layout: ChannelPlan['layout']
  readonly seats: ChannelPlan['seats']
  readonly key: string
  readonly picture: ChannelPicture
}

/**
 * The channels as they are drawn. A picture keeps its identity while its channel, how it lies and sits in the plan and its
 * place in the choice are the same, so that only what changed is drawn anew.
 */
export function pictureMaker() {
  let kept = new Map<string, Kept>()
  return (
    channels: readonly Channel[],
    plans: readonly ChannelPlan[],
    selection: Selection,
    canopies: boolean
  ): readonly ChannelPicture[] => {
    const next = new Map<string, Kept>()
    const byId = new Map(channels.map((each) => [each.id, each]))
    const pictures = plans.flatMap((plan) => {
      const channel = byId.get(plan.channelId)
      if (channel === undefined) return []
      const chosen = selection.channelIds.includes(channel.id)
      const sites = chosen ? selection.siteIds : NO_IDS
      const openingId = chosen ? selection.openingId : null
      const key = `${chosen}|${sites.join()}|${openingId}|${canopies}|${plan.mark}`
      const before = kept.get(channel.id)
      const same =
        before?.channel === channel &&
        before.layout === plan.layout &&
        before.seats === plan.seats &&
        before.key === key
      const picture: ChannelPicture = same
        ? before.picture
        : {
            channel,
            layout: plan.layout,
            mark: plan.mark,
            rimsMm: new Map(plan.seats.map((seat) => [seat.siteId, seat.widestMm])),
            chosen,
            chosenSites: sites,
            openingId,
            canopies
          }
      next.set(channel.id, { channel, layout: plan.layout, seats: plan.seats, key, picture })
      return [picture]
    })
    kept = next
    return pictures
  }
}

/** The last list again as long as it holds the same things. */
export function sameListMaker<T>() {
  let last: readonly T[] = []
  return (list: readonly T[]): readonly T[] => {
    if (list.length !== last.length || list.some((each, at) => each !== last[at])) last = list
    return last
  }
}
