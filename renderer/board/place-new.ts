import { addChannel, addSeat, addSite, type Design, type Edited } from '../../shared-model/design'
import { failed } from '../../shared-model/outcome'
import type { EndClosure } from '../../shared-model/parts'
import type { Plan } from '../../shared-model/plan'
import type { Profile } from '../../shared-model/profile'
import { graduationNm, mm, setOnGraduation } from '../../shared-model/units'
import { closureFor } from '../catalogue/fitting-closures'
import { type Offered, offered } from '../catalogue/offered'
import { nearestSeating, seatingSaw } from '../catalogue/seating-saw'
import { chooseChannel, chooseSite } from '../store/selection'
import type { AppState, AppStore } from '../store/store'
import { pick } from './pick'
import { alongRun } from './runs'
import type { Point } from './scale'

/** The profile that a new channel takes: the last channel's, else the first one on offer that has stock, else the first. */
export function profileForNew(state: AppState, from: Offered): Profile | undefined {
  const last = state.design.channels.at(-1)?.profileId
  const stocked = state.workshop.stock[0]?.profileId
  return (
    from.profiles.find((each) => each.id === last) ??
    from.profiles.find((each) => each.id === stocked) ??
    from.profiles.find((each) => each.shape === 'rectangle') ??
    from.profiles[0]
  )
}

/** How wide and how high a profile lies when it is not turned; the room that its closures take. */
const roomOf = (profile: Profile, closure: EndClosure) => ({
  acrossMm: profile.widthMm + 2 * closure.proudMm,
  endsMm: closure.addsLengthMm * 2
})

/** The y of the first free strip along the sill, from the glass side, for a channel this wide. */
function freeStrip(plan: Plan, clearanceMm: number, acrossMm: number): number {
  const taken = plan.channels.map(({ layout }) => layout.outline).sort((a, b) => b.yMm - a.yMm)
  let top = plan.sill.depthMm - clearanceMm
  for (const outline of taken) {
    if (top - acrossMm >= outline.yMm + outline.depthMm) break
    top = Math.min(top, outline.yMm - clearanceMm)
  }
  return Math.max(acrossMm / 2, top - acrossMm / 2)
}

/** A channel drawn out by hand from one point to another, or, with a click only, along the whole sill there. */
export function addDrawnChannel(
  store: AppStore,
  plan: Plan,
  drawn: { readonly from: Point; readonly to: Point },
  dragged: boolean,
  exactMm: number | null = null
): void {
  const state = store.getState()
  const from = offered(state.design, state.workshop)
  const profile = profileForNew(state, from)
  const closure = profile === undefined ? undefined : closureFor(from.closures, profile)
  if (profile === undefined || closure === undefined) return
  const upright = dragged && Math.abs(drawn.to.y - drawn.from.y) > Math.abs(drawn.to.x - drawn.from.x)
  const whole = fullLength(plan, state, profile, closure, upright)
  const graduation = graduationNm(state.workshop.shows)
  const rawMm = upright ? Math.abs(drawn.to.y - drawn.from.y) : Math.abs(drawn.to.x - drawn.from.x)
  const setMm = Math.max(1, exactMm ?? setOnGraduation(mm(rawMm), graduation, 'nearest'))
  const lengthMm = dragged ? setMm : whole.lengthMm
  const at = dragged
    ? {
        xMm: upright || drawn.to.x > drawn.from.x ? drawn.from.x : drawn.from.x - lengthMm,
        yMm: !upright || drawn.to.y > drawn.from.y ? drawn.from.y : drawn.from.y - lengthMm
      }
    : { xMm: whole.startMm, yMm: drawn.from.y }
  put(store, (design) =>
    addChannel(design, {
      profile,
      datumClosure: closure,
      farClosure: closure,
      ...at,
      lengthMm,
      heading: upright ? 90 : 0
    })
  )
}

/** A channel along the whole sill in the first free strip: the way of the key and of the button. */
export function addFittingChannel(store: AppStore, plan: Plan, chosen?: Profile): void {
  const state = store.getState()
  const from = offered(state.design, state.workshop)
  const profile = chosen ?? profileForNew(state, from)
  const closure = profile === undefined ? undefined : closureFor(from.closures, profile)
  if (profile === undefined || closure === undefined) return
  const { lengthMm, startMm } = fullLength(plan, state, profile, closure, false)
  const yMm = freeStrip(plan, state.design.sill.clearanceMm, roomOf(profile, closure).acrossMm)
  put(store, (design) =>
    addChannel(design, { profile, datumClosure: closure, farClosure: closure, xMm: startMm, yMm, lengthMm })
  )
}

function put(store: AppStore, change: (design: Design) => Edited<Design>): void {
  if (store.do.editDesign('add a channel', change) !== null) return
  const made = store.getState().design.channels.at(-1)
  if (made !== undefined) store.do.select(chooseChannel(made.id))
  store.do.look({ tool: 'choose', said: `Channel ${store.getState().design.channels.length} added` })
}

function fullLength(plan: Plan, state: AppState, profile: Profile, closure: EndClosure, upright: boolean) {
  const { clearanceMm } = state.design.sill
  const sideMm = upright ? plan.sill.depthMm : plan.sill.lengthMm
  const roomMm = sideMm - 2 * clearanceMm - roomOf(profile, closure).endsMm
  const lengthMm = Math.max(1, setOnGraduation(mm(Math.max(1, roomMm)), graduationNm(state.workshop.shows), 'down'))
  return { lengthMm, startMm: clearanceMm + closure.addsLengthMm }
}

/** What a new site holds: what the channel's last one holds, else the design's last seat and crop, else a first seat. */
export function contentsForNew(
  design: Design,
  channelId: string,
  from: Offered
): { design: Design; seatId: string; cropId: string | null } | null {
  const last = design.channels.find((each) => each.id === channelId)?.sites.at(-1)
  if (last !== undefined) return { design, seatId: last.seatId, cropId: last.cropId }
  const any = design.channels.flatMap((each) => each.sites).at(-1)
  const cropId = any?.cropId ?? design.crops[0]?.id ?? null
  const seat = design.seats.at(-1)
  if (seat !== undefined) return { design, seatId: seat.id, cropId }
  const profile = from.profiles.find(
    (each) => each.id === design.channels.find((own) => own.id === channelId)?.profileId
  )
  const seating = (profile === undefined ? null : seatingSaw(from, profile)) ?? nearestSeating(from)
  if (seating === null) return null
  const made = addSeat(design, { name: seating.cup.name, ...seating })
  const seatId = made.seats.at(-1)?.id
  return seatId === undefined ? null : { design: made, seatId, cropId }
}

/** A site where the board was clicked, on the channel that lies there. */
export function addSiteAt(store: AppStore, plan: Plan, at: Point): void {
  const state = store.getState()
  const channels = plan.channels.map(({ layout }) => ({ layout, heading: 0, chosen: false }))
  const picked = pick(channels, at, 0)
  const channelId = picked.kind === 'nothing' ? null : picked.channelId
  const channel = state.design.channels.find((each) => each.id === channelId)
  if (channel === undefined) return
  const graduation = graduationNm(state.workshop.shows)
  const rawMm = alongRun(channel.heading, { x: at.x - channel.xMm, y: at.y - channel.yMm })
  const atMm = setOnGraduation(mm(Math.min(channel.lengthMm, Math.max(0, rawMm))), graduation, 'nearest')
  store.do.editDesign('add a cup site', (design) => {
    const holds = contentsForNew(design, channel.id, offered(design, state.workshop))
    if (holds === null) return failed({ code: 'edit-not-found', figures: { what: 'cup', id: '' } })
    return addSite(holds.design, channel.id, atMm, { seatId: holds.seatId, cropId: holds.cropId })
  })
  const made = store
    .getState()
    .design.channels.find((each) => each.id === channel.id)
    ?.sites.at(-1)
  if (made !== undefined) store.do.select(chooseSite(channel.id, made.id))
}
