import {
  copyChannels,
  deleteChannels,
  deleteOpening,
  deletePinned,
  deleteSites,
  mirrorChannels,
  turnChannel
} from '../../shared-model/design'
import type { Heading } from '../../shared-model/layout'
import { ok } from '../../shared-model/outcome'
import type { Plan } from '../../shared-model/plan'
import { NOTHING } from '../store/selection'
import type { AppStore } from '../store/store'
import { joined } from './scale'

/** Takes away what is chosen: sites before their channel. */
export function deleteChosen(store: AppStore): void {
  const { channelIds, siteIds, openingId, pinnedId } = store.getState().selection
  const [channelId] = channelIds
  if (pinnedId !== null) {
    store.do.editDesign('take a pinned thing away', (design) => ok(deletePinned(design, pinnedId)))
    store.do.look({ said: 'Taken away' })
    return
  }
  if (channelId === undefined) return
  if (openingId !== null) {
    store.do.editDesign('take a service opening away', (design) => deleteOpening(design, channelId, openingId))
  } else if (siteIds.length > 0) {
    store.do.editDesign('take cup sites away', (design) => deleteSites(design, channelId, siteIds))
  } else {
    store.do.editDesign('take channels away', (design) => deleteChannels(design, channelIds))
    store.do.select(NOTHING)
  }
  store.do.look({ said: 'Taken away' })
}

/** Copies the chosen channels into the room beside them: towards the room first, else towards the glass. */
export function copyChosen(store: AppStore, plan: Plan): void {
  const { channelIds } = store.getState().selection
  const outlines = plan.channels
    .filter((each) => channelIds.includes(each.channelId))
    .map((each) => each.layout.outline)
  const whole = joined(outlines)
  if (whole === null) return
  const { clearanceMm } = store.getState().design.sill
  const stepMm = whole.depthMm + Math.max(clearanceMm, 10)
  const down = whole.yMm - stepMm >= 0
  const before = store.getState().design.channels.length
  store.do.editDesign('copy channels', (design) => copyChannels(design, channelIds, 0, down ? -stepMm : stepMm))
  const made = store.getState().design.channels.slice(before)
  if (made.length > 0) store.do.select({ ...NOTHING, channelIds: made.map((each) => each.id) })
}

export function mirrorChosen(store: AppStore): void {
  const { channelIds } = store.getState().selection
  store.do.editDesign('mirror channels', (design) => mirrorChannels(design, channelIds))
}

const TURNED: Readonly<Record<Heading, Heading>> = { 0: 90, 90: 180, 180: 270, 270: 0 }

/** A quarter turn of each chosen channel about its middle. */
export function turnChosen(store: AppStore): void {
  const { channelIds } = store.getState().selection
  store.do.editDesign('turn channels', (design) =>
    channelIds.reduce<ReturnType<typeof turnChannel>>((made, id) => {
      if (!made.ok) return made
      const channel = made.value.channels.find((each) => each.id === id)
      return channel === undefined ? made : turnChannel(made.value, id, TURNED[channel.heading])
    }, ok(design))
  )
}
