import { type Anchor, pinDimension, pinNote } from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'
import type { Plan } from '../../../shared-model/plan'
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
  const { pinFrom } = boardStore.getState()
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
  store.do.editDesign('pin a dimension', (design) => ok(pinDimension(design, from, to)))
  boardStore.setState({ pinFrom: null })
  store.do.look({ tool: 'choose', said: 'Dimension pinned' })
}

/** A click with the note tool: a note there, its words ready to be typed over. */
export function pinNoteHere(store: AppStore, at: Point): void {
  store.do.editDesign('pin a note', (design) => ok(pinNote(design, Math.round(at.x), Math.round(at.y), 'Note')))
  store.do.look({ tool: 'choose', said: 'Note pinned' })
  const made = store.getState().design.notes.at(-1)
  if (made !== undefined) requestAnimationFrame(() => focusNote(made.id))
}

function focusNote(id: string): void {
  const field = document.querySelector(`[data-path="notes.${id}"]`)
  const part = field?.closest('details')
  if (part instanceof HTMLDetailsElement) part.open = true
  if (field instanceof HTMLInputElement) {
    field.focus()
    field.select()
  }
}
