import { type KeyboardEvent, useMemo, useRef } from 'react'
import { editOpening, moveChannels, moveSites } from '../../../shared-model/design'
import { graduationNm, mm, NM_PER_MM, parseLength, showLength } from '../../../shared-model/units'
import { usePlanStore } from '../../plan/use-plan'
import { NOTHING, type Selection } from '../../store/selection'
import { useAppStore } from '../../store/use-app'
import { copyChosen, deleteChosen } from '../board-acts'
import { boardStore } from '../board-store'
import { addDrawnChannel } from '../place-new'
import { alongRun } from '../runs'
import { panned, zoomedAt } from '../scale'
import { useFit } from '../use-fit'
import { walked } from '../walk'
import { applied, appliedExactly } from './apply'
import { pinnedGesture } from './pinned-gesture'

const ARROWS: Readonly<Record<string, { readonly x: number; readonly y: number }>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 }
}
const LARGER = 10
const PAN_PX = 40

/** Everything the hand does on the board, by key. A held arrow key makes one step of the history. */
export function useBoardKeys() {
  const store = useAppStore()
  const planStore = usePlanStore()
  const fitSill = useFit()
  const nudged = useRef({ x: 0, y: 0, open: false })

  return useMemo(() => {
    const nudge = (arrow: { readonly x: number; readonly y: number }, larger: boolean): void => {
      const state = store.getState()
      const { channelIds, siteIds, openingId, pinnedId } = state.selection
      if (channelIds.length === 0 && pinnedId === null) {
        boardStore.setState((board) => ({
          scale: panned(board.scale, -arrow.x * PAN_PX, arrow.y * PAN_PX),
          placed: true
        }))
        return
      }
      const step = (graduationNm(state.workshop.shows) / NM_PER_MM) * (larger ? LARGER : 1)
      nudged.current = {
        x: nudged.current.x + arrow.x * step,
        y: nudged.current.y + arrow.y * step,
        open: true
      }
      const by = nudged.current
      const channel = state.design.channels.find((each) => each.id === channelIds[0])
      if (pinnedId !== null) nudgePinned(pinnedId, by)
      else if (openingId !== null && channel !== undefined) {
        const startMm = openingNow(openingId)?.atMm ?? 0
        store.do.drag((design) =>
          editOpening(design, channel.id, openingId, { atMm: startMm + alongRun(channel.heading, by) })
        )
      } else if (siteIds.length > 0 && channel !== undefined) {
        store.do.drag((design) => moveSites(design, channel.id, siteIds, alongRun(channel.heading, by)))
      } else store.do.drag((design) => moveChannels(design, channelIds, by.x, by.y))
    }

    /** From before the nudging began, so that held keys add up once. */
    const before = () => store.getState().history.held?.design ?? store.getState().design
    const openingNow = (id: string) =>
      before()
        .channels.find((each) => each.id === store.getState().selection.channelIds[0])
        ?.openings.find((each) => each.id === id)
    const nudgePinned = (id: string, by: { readonly x: number; readonly y: number }): void => {
      const held = { design: before() }
      const gesture = pinnedGesture(id, { x: 0, y: 0 }, held, planStore.getState().live, boardStore.getState().scale)
      const done = gesture === null ? null : applied(gesture, by, held.design, null)
      if (done !== null) store.do.drag(done.change)
    }

    const settle = (): void => {
      if (!nudged.current.open) return
      nudged.current = { x: 0, y: 0, open: false }
      const { selection } = store.getState()
      store.do.drop(movedWhat(selection))
      const { design, workshop } = store.getState()
      const channel = design.channels.find((each) => each.id === selection.channelIds[0])
      const site = channel?.sites.find((each) => each.id === selection.siteIds[0])
      const said = (valueMm: number): string => showLength(mm(valueMm), workshop.shows)
      const opening = channel?.openings.find((each) => each.id === selection.openingId)
      const note = design.notes.find((each) => each.id === selection.pinnedId)
      if (note !== undefined) {
        store.do.look({ said: `Note ${said(note.xMm)} from the left, ${said(note.yMm)} from the front` })
        return
      }
      if (opening !== undefined) {
        store.do.look({ said: `Opening ${said(opening.atMm)} from the datum end` })
        return
      }
      if (site !== undefined) store.do.look({ said: `Site ${said(site.atMm)} from the datum end` })
      else if (channel !== undefined)
        store.do.look({ said: `Channel ${said(channel.xMm)} from the left, ${said(channel.yMm)} from the front` })
    }

    /** While dragging: figures are typed, Enter sets them. Gives back whether the key was taken. */
    const typing = (event: KeyboardEvent, cancel: () => void): boolean => {
      const { gesture, live, typed } = boardStore.getState()
      if (gesture === null) return false
      if (event.key === 'Escape') cancel()
      else if (event.key === 'Backspace') boardStore.setState({ typed: typed.slice(0, -1) })
      else if (event.key === 'Enter' && typed !== '' && live !== null) {
        const { shows } = store.getState().workshop
        const reading = parseLength(typed, {
          shown: shows.units,
          decimalMark: shows.decimalMark,
          negative: gesture.kind === 'move' || gesture.kind === 'note' || gesture.kind === 'stand-off'
        })
        if (reading.ok && gesture.kind === 'draw') {
          boardStore.setState({ gesture: null, live: null, typed: '' })
          addDrawnChannel(store, planStore.getState().live, gesture, true, reading.value)
          return true
        }
        const exact = reading.ok ? appliedExactly(gesture, reading.value, live) : null
        if (exact === null) return true
        store.do.drag(exact.change)
        store.do.drop(exact.what)
        boardStore.setState({ gesture: null, live: null, typed: '' })
      } else if (/^[0-9.,/'" a-z-]$/i.test(event.key) && !event.ctrlKey && !event.metaKey) {
        boardStore.setState({ typed: typed + event.key })
      } else return false
      return true
    }

    const down = (event: KeyboardEvent, cancel: () => void): void => {
      if (typing(event, cancel)) {
        event.preventDefault()
        return
      }
      const { width, height } = boardStore.getState().size
      const middle = { x: width / 2, y: height / 2 }
      const zoom = (factor: number): void =>
        boardStore.setState((state) => ({ scale: zoomedAt(state.scale, middle, factor), placed: true }))
      const arrow = ARROWS[event.key]
      const command = event.ctrlKey || event.metaKey
      const key = event.key.toLowerCase()
      if (arrow !== undefined && !command) nudge(arrow, event.shiftKey)
      else if (event.key === 'Tab') {
        const { design, selection } = store.getState()
        const next = walked(design, selection, event.shiftKey ? -1 : 1)
        if (next === null) return
        store.do.select(next.selection)
        store.do.look({ said: next.said })
      } else if (event.key === 'Delete' || event.key === 'Backspace') deleteChosen(store)
      else if (event.key === 'Escape') {
        boardStore.setState({ pinFrom: null })
        store.do.look({ tool: 'choose' })
        store.do.select(NOTHING)
      } else if (event.key === 'Enter')
        document.querySelector<HTMLInputElement>('.board-strip .chosen-fields input')?.focus()
      else if (key === '+' || key === '=') zoom(1.25)
      else if (key === '-') zoom(0.8)
      else if (key === '0' && !command) fitSill()
      else if (command && key === 'a') {
        store.do.select({ ...NOTHING, channelIds: store.getState().design.channels.map((each) => each.id) })
      } else if (command && (key === 'c' || key === 'v' || key === 'd')) {
        if (key !== 'c') copyChosen(store, planStore.getState().live)
      } else return
      event.preventDefault()
    }
    return {
      down,
      up: (event: KeyboardEvent) => {
        if (ARROWS[event.key] !== undefined) settle()
      }
    }
  }, [store, planStore, fitSill])
}

const movedWhat = ({ siteIds, openingId, pinnedId }: Selection): string => {
  if (pinnedId !== null) return 'move a pinned thing'
  if (openingId !== null) return 'move a service opening'
  return siteIds.length > 0 ? 'move a cup site' : 'move a channel'
}
