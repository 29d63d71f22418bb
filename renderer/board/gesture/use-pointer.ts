import { type PointerEvent, useMemo, useRef } from 'react'
import { usePlanStore } from '../../plan/use-plan'
import {
  chooseChannel,
  chooseOpening,
  choosePinned,
  chooseSite,
  NOTHING,
  toggleChannel,
  toggleSite
} from '../../store/selection'
import { useAppStore } from '../../store/use-app'
import { boardStore, type Gesture, type Live } from '../board-store'
import { pick, touched } from '../pick'
import { pickPinned } from '../pinned/pick-pinned'
import { pinDimensionHere, pinNoteHere } from '../pinned/pin-here'
import { addDrawnChannel, addSiteAt } from '../place-new'
import { type Point, panned, toMm } from '../scale'
import { type Applied, applied } from './apply'
import { gestureFrom } from './gesture-from'
import { pinnedGesture } from './pinned-gesture'
import { snappingNow } from './snapping-now'

/** A hand trembles by this much without meaning it. */
const STILL_PX = 3
/** Targets answer within this many pixels of their middle: 24 px in all. */
const TARGET_PX = 12

/** The length of a channel that is being drawn, to stand beside the hand. */
const drawnFigure = (from: Point, to: Point): Live => ({
  label: 'Cut length',
  valueMm: Math.max(Math.abs(to.x - from.x), Math.abs(to.y - from.y)),
  acrossMm: 0,
  way: 'along',
  lines: []
})

/** The mouse, pen or finger on the board. One gesture makes one step of the history. */
export function usePointer() {
  const store = useAppStore()
  const planStore = usePlanStore()
  const pressed = useRef<{ readonly at: Point; moved: boolean; applied: Applied | null } | null>(null)

  return useMemo(() => {
    const place = (event: PointerEvent): Point => {
      const box = event.currentTarget.getBoundingClientRect()
      return { x: event.clientX - box.left, y: event.clientY - box.top }
    }
    const channelsNow = () => {
      const { design, selection } = store.getState()
      return planStore.getState().live.channels.flatMap(({ layout }) => {
        const channel = design.channels.find((each) => each.id === layout.channelId)
        return channel === undefined
          ? []
          : [{ layout, heading: channel.heading, chosen: selection.channelIds.includes(channel.id) }]
      })
    }
    const choose = (event: PointerEvent, at: Point): ReturnType<typeof pick> => {
      const picked = pick(channelsNow(), at, TARGET_PX / boardStore.getState().scale.pxPerMm)
      const { selection } = store.getState()
      const more = event.shiftKey || event.ctrlKey || event.metaKey
      if (picked.kind === 'channel') {
        if (more) store.do.select(toggleChannel(selection, picked.channelId))
        else if (!selection.channelIds.includes(picked.channelId) || selection.siteIds.length > 0) {
          store.do.select(chooseChannel(picked.channelId))
        }
      }
      if (picked.kind === 'site') {
        if (more) store.do.select(toggleSite(selection, picked.channelId, picked.siteId))
        else if (!selection.siteIds.includes(picked.siteId))
          store.do.select(chooseSite(picked.channelId, picked.siteId))
      }
      if (picked.kind === 'opening') {
        store.do.select(chooseOpening(picked.channelId, picked.openingId))
      }
      if (picked.kind === 'nothing' && !more) store.do.select(NOTHING)
      return picked
    }

    const down = (event: PointerEvent): void => {
      const at = place(event)
      const { scale } = boardStore.getState()
      const onSill = toMm(scale, at)
      const { tool } = store.getState().view
      event.currentTarget.setPointerCapture(event.pointerId)
      pressed.current = { at, moved: false, applied: null }
      const start = (gesture: Gesture | null): void => boardStore.setState({ gesture, typed: '', live: null })
      if (event.button !== 0 || tool === 'hand') {
        start({ kind: 'pan', last: at })
        return
      }
      if (tool === 'channel') {
        start({ kind: 'draw', from: onSill, to: onSill })
        return
      }
      if (tool === 'site') {
        addSiteAt(store, planStore.getState().live, onSill)
        return
      }
      if (tool === 'measure') {
        pinDimensionHere(store, planStore.getState().live, onSill, TARGET_PX / scale.pxPerMm)
        return
      }
      if (tool === 'note') {
        pinNoteHere(store, onSill)
        return
      }
      const { live } = planStore.getState()
      const pinnedId = pickPinned(
        { design: store.getState().design, sill: live.sill, scale, pictureWidth: boardStore.getState().size.width },
        at
      )
      if (pinnedId !== null) {
        store.do.select(choosePinned(pinnedId))
        start(pinnedGesture(pinnedId, onSill, store.getState(), live, scale))
        return
      }
      start(
        gestureFrom(
          choose(event, onSill),
          onSill,
          store.getState(),
          planStore.getState().live,
          event.altKey && event.shiftKey
        )
      )
    }

    const move = (event: PointerEvent): void => {
      const { gesture, scale, typed } = boardStore.getState()
      const held = pressed.current
      if (gesture === null || held === null) return
      const at = place(event)
      if (!held.moved && Math.hypot(at.x - held.at.x, at.y - held.at.y) < STILL_PX) return
      held.moved = true
      if (gesture.kind === 'pan') {
        boardStore.setState({
          scale: panned(scale, at.x - gesture.last.x, at.y - gesture.last.y),
          placed: true,
          gesture: { kind: 'pan', last: at }
        })
        return
      }
      const onSill = toMm(scale, at)
      if (gesture.kind === 'box' || gesture.kind === 'draw') {
        if (typed === '') boardStore.setState({ gesture: { ...gesture, to: onSill } })
        if (gesture.kind === 'draw') boardStore.setState({ live: drawnFigure(gesture.from, onSill) })
        return
      }
      if (typed !== '') return
      const state = store.getState()
      const plan = planStore.getState().live
      const moving = gesture.kind === 'move' ? gesture.ids : 'channelId' in gesture ? [gesture.channelId] : []
      const done = applied(
        gesture,
        onSill,
        state.history.held?.design ?? state.design,
        snappingNow(state, plan, scale, moving, event.altKey)
      )
      if (done === null) return
      held.applied = done
      store.do.drag(done.change)
      boardStore.setState({ live: done.live })
    }

    const up = (event: PointerEvent): void => {
      const { gesture } = boardStore.getState()
      const held = pressed.current
      pressed.current = null
      boardStore.setState({ gesture: null, live: null, typed: '' })
      if (gesture === null || held === null) return
      if (gesture.kind === 'box' && held.moved) {
        const layouts = planStore.getState().live.channels.map((channel) => channel.layout)
        const ids = touched(layouts, gesture)
        const { selection } = store.getState()
        const kept = event.shiftKey ? selection.channelIds : []
        store.do.select({ ...NOTHING, channelIds: [...new Set([...kept, ...ids])] })
      }
      if (gesture.kind === 'draw') addDrawnChannel(store, planStore.getState().live, gesture, held.moved)
      if (held.applied !== null) store.do.drop(held.applied.what)
      else store.do.cancelDrag()
    }
    const cancel = (): void => {
      pressed.current = null
      boardStore.setState({ gesture: null, live: null, typed: '' })
      store.do.cancelDrag()
    }
    return { down, move, up, cancel }
  }, [store, planStore])
}
