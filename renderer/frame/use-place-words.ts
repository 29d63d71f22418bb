import type { Where } from '../../shared-model/outcome'
import { OPENING_NAMES } from '../../shared-model/words'
import { usePlanState } from '../plan/use-plan'
import { useApp } from '../store/use-app'

/** Where a finding belongs, by the marks on the board: `Channel 2, site 3`. */
export function usePlaceWords(where: Where): string {
  const channel = useApp((state) => state.design.channels.find((each) => each.id === where.channelId))
  const mark = usePlanState(({ live }) => live.channels.find((each) => each.channelId === where.channelId)?.mark)
  if (channel === undefined) return ''
  const name = `Channel ${mark ?? channel.name}`
  const opening = channel.openings.find((each) => each.id === where.openingId)
  if (opening !== undefined) return `${name}, ${OPENING_NAMES[opening.kind].toLowerCase()}`
  const sorted = [...channel.sites].sort((a, b) => a.atMm - b.atMm)
  const serial = sorted.findIndex((site) => site.id === where.siteId)
  return serial === -1 ? name : `${name}, site ${serial + 1}`
}
