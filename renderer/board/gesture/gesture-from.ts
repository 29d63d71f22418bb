import type { Plan } from '../../../shared-model/plan'
import type { AppState } from '../../store/store'
import type { Gesture } from '../board-store'
import type { Picked } from '../pick'
import { joined, type Point } from '../scale'

/** The gesture that begins with the hand on what was picked. */
export function gestureFrom(picked: Picked, from: Point, state: AppState, plan: Plan, copy: boolean): Gesture | null {
  if (picked.kind === 'nothing') return { kind: 'box', from, to: from }
  const channel = state.design.channels.find((each) => each.id === picked.channelId)
  const layout = plan.channels.find((each) => each.channelId === picked.channelId)?.layout
  if (channel === undefined || layout === undefined) return null
  if (picked.kind === 'end') {
    const across = channel.heading === 0 || channel.heading === 180
    const startMm = across ? layout.outline.xMm : layout.outline.yMm
    const endMm = startMm + (across ? layout.outline.lengthMm : layout.outline.depthMm)
    const rising = channel.heading === 0 || channel.heading === 90
    const faceMm = (picked.end === 'far') === rising ? endMm : startMm
    return { kind: 'pull', channelId: channel.id, end: picked.end, from, startMm: channel.lengthMm, faceMm }
  }
  if (picked.kind === 'site') {
    const site = channel.sites.find((each) => each.id === picked.siteId)
    if (site === undefined) return null
    const siteIds = state.selection.siteIds.includes(site.id) ? state.selection.siteIds : [site.id]
    return { kind: 'site', channelId: channel.id, siteIds, siteId: site.id, from, startMm: site.atMm }
  }
  if (picked.kind === 'opening') {
    const opening = channel.openings.find((each) => each.id === picked.openingId)
    if (opening === undefined) return null
    return { kind: 'opening', channelId: channel.id, openingId: opening.id, from, startMm: opening.atMm }
  }
  const ids = state.selection.channelIds
  const start = joined(plan.channels.filter((each) => ids.includes(each.channelId)).map((each) => each.layout.outline))
  return start === null || ids.length === 0 ? null : { kind: 'move', ids, from, start, copy }
}
