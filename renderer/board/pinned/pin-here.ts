import { type Anchor, pinDimension, pinNote, pinnedSpan } from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'
import type { Plan } from '../../../shared-model/plan'
import { reachField } from '../../frame/reach-field'
import { choosePinned } from '../../store/selection'
import type { AppStore } from '../../store/store'
import { boardStore } from '../board-store'
import type { Point } from '../scale'
import { anchorAt } from './anchor-at'
import { anchorKey } from './anchor-names'

/** A click with the measuring tool: the first chooses where from, the second pins. */
export function pinDimensionHere(store: AppStore, plan: Plan, at: Point, reachMm: number): void {
  const { design } = store.getState()
  const drawn = plan.channels.flatMap(({ layout }) => {
    const channel = design.channels.find((each) => each.id === layout.channelId)
    return channel === undefined ? [] : [{ layout, heading: channel.heading }]
  })
  const here = anchorAt(drawn, plan.sill, at, reachMm)
  const begun = boardStore.getState().pinFrom
  // What it was begun on may have been taken away since.
  const pinFrom = begun !== null && pinnedSpan(design, plan.sill, { from: begun, to: begun }) !== null ? begun : null
  if (here === null) {
    store.do.look({ said: 'Nothing there to measure to' })
    return
  }
  if (pinFrom === null || anchorKey(pinFrom) === anchorKey(here)) {
    boardStore.setState({ pinFrom: here })
    store.do.look({ said: 'Measured from here; choose where to' })
    return
  }
  pinBetween(store, pinFrom, here)
}

/** Pins a dimension between two things and lets go of the tool. */
export function pinBetween(store: AppStore, from: Anchor, to: Anchor): void {
  const problem = store.do.editDesign('pin a dimension', (design) => ok(pinDimension(design, from, to)))
  boardStore.setState({ pinFrom: null })
  store.do.look({ tool: 'choose', ...(problem === null ? { said: 'Dimension pinned' } : {}) })
  if (problem !== null) return
  const made = store.getState().design.dimensions.at(-1)
  if (made !== undefined) store.do.select(choosePinned(made.id))
}

/** A click with the note tool: a note there, its words ready to be typed over. */
export function pinNoteHere(store: AppStore, at: Point): void {
  const [x, y] = [Math.round(at.x), Math.round(at.y)]
  const problem = store.do.editDesign('pin a note', (design) => ok(pinNote(design, x, y, 'Note')))
  store.do.look({ tool: 'choose', ...(problem === null ? { said: 'Note pinned' } : {}) })
  if (problem !== null) return
  const made = store.getState().design.notes.at(-1)
  if (made === undefined) return
  store.do.select(choosePinned(made.id))
  reachField(`notes.${made.id}`)
}
