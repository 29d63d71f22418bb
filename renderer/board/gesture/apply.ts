import {
  copyChannels,
  type Design,
  type Edited,
  editNote,
  editOpening,
  moveChannels,
  moveSites,
  resizeChannel,
  standOff
} from '../../../shared-model/design'
import { ok } from '../../../shared-model/outcome'
import { mm, setOnGraduation } from '../../../shared-model/units'
import type { Gesture, Live } from '../board-store'
import type { Point } from '../scale'
import { moved, pulled, type Snapping, slid } from './moved'

/** A gesture as it stands: the change it makes to the design from before it, and what is shown. */
export interface Applied {
  readonly change: (design: Design) => Edited<Design>
  readonly live: Live
  readonly what: string
}

/** What a gesture has come to with the hand at `at`; null for those that change no design while they last. */
export function applied(gesture: Gesture, at: Point, before: Design, snapping: Snapping | null): Applied | null {
  if (gesture.kind === 'pan' || gesture.kind === 'box' || gesture.kind === 'draw') return null
  const by = { x: at.x - gesture.from.x, y: at.y - gesture.from.y }
  if (gesture.kind === 'move') {
    const to = moved(gesture.start, by, snapping)
    const way = Math.abs(by.y) > Math.abs(by.x) ? 'back' : 'along'
    return moveApplied(gesture, to.dxMm, to.dyMm, to.lines, way)
  }
  if (gesture.kind === 'note')
    return noteApplied(gesture, { x: gesture.start.x + by.x, y: gesture.start.y + by.y }, snapping)
  if (gesture.kind === 'stand-off') {
    const wantedMm = gesture.startMm + (gesture.upright ? by.x : -by.y)
    const made = standOff(before, gesture.dimensionId, wantedMm)
    return standOffApplied(gesture, made.dimensions.find(({ id }) => id === gesture.dimensionId)?.offMm ?? wantedMm)
  }
  const channel = before.channels.find((each) => each.id === gesture.channelId)
  if (channel === undefined) return null
  if (gesture.kind === 'pull') {
    const to = pulled({ ...gesture, heading: channel.heading, by }, snapping)
    return lengthApplied(gesture, to.lengthMm, to.lines)
  }
  const toMm = slid(gesture.startMm, channel.heading, by, channel.lengthMm, snapping)
  return positionApplied(gesture, toMm)
}

/** The same gesture with the figure typed instead of dragged. */
export function appliedExactly(gesture: Gesture, valueMm: number, live: Live): Applied | null {
  switch (gesture.kind) {
    case 'move':
      return live.way === 'back'
        ? moveApplied(gesture, live.acrossMm, valueMm - gesture.start.yMm, [], 'back')
        : moveApplied(gesture, valueMm - gesture.start.xMm, live.acrossMm, [], 'along')
    case 'pull':
      return lengthApplied(gesture, valueMm, [])
    case 'note':
      return live.way === 'back'
        ? noteApplied(gesture, { x: live.acrossMm, y: valueMm }, null)
        : noteApplied(gesture, { x: valueMm, y: live.acrossMm }, null)
    case 'stand-off':
      return standOffApplied(gesture, valueMm)
    case 'site':
    case 'opening':
      return positionApplied(gesture, valueMm)
    default:
      return null
  }
}

type Of<K extends Gesture['kind']> = Extract<Gesture, { readonly kind: K }>

const moveApplied = (
  gesture: Of<'move'>,
  dxMm: number,
  dyMm: number,
  lines: Live['lines'],
  way: Live['way']
): Applied => ({
  change: (design) => {
    if (!gesture.copy) return moveChannels(design, gesture.ids, dxMm, dyMm)
    return copyChannels(design, gesture.ids, dxMm, dyMm)
  },
  live:
    way === 'back'
      ? { label: 'Near side, from the front edge', valueMm: gesture.start.yMm + dyMm, acrossMm: dxMm, way, lines }
      : { label: 'Left side, from the sill’s left end', valueMm: gesture.start.xMm + dxMm, acrossMm: dyMm, way, lines },
  what: gesture.copy ? 'copy channels' : gesture.ids.length === 1 ? 'move a channel' : 'move channels'
})

const lengthApplied = (gesture: Of<'pull'>, lengthMm: number, lines: Live['lines']): Applied => ({
  change: (design) => resizeChannel(design, gesture.channelId, lengthMm, gesture.end),
  live: { label: 'Cut length', valueMm: lengthMm, acrossMm: 0, way: 'along', lines },
  what: 'change a length'
})

const positionApplied = (gesture: Of<'site'> | Of<'opening'>, atMm: number): Applied => ({
  change: (design) =>
    gesture.kind === 'site'
      ? moveSites(design, gesture.channelId, gesture.siteIds, atMm - gesture.startMm)
      : editOpening(design, gesture.channelId, gesture.openingId, { atMm }),
  live: { label: 'From the datum end', valueMm: atMm, acrossMm: 0, way: 'along', lines: [] },
  what: gesture.kind === 'site' ? 'move a cup site' : 'move a service opening'
})

function noteApplied(gesture: Of<'note'>, to: Point, snapping: Snapping | null): Applied {
  const set = (valueMm: number): number =>
    snapping === null ? valueMm : setOnGraduation(mm(valueMm), snapping.graduation, 'nearest')
  const at = { x: set(to.x), y: set(to.y) }
  const back = Math.abs(at.y - gesture.start.y) > Math.abs(at.x - gesture.start.x)
  return {
    change: (design) => ok(editNote(design, gesture.noteId, { xMm: at.x, yMm: at.y })),
    live: back
      ? { label: 'Note, from the front edge', valueMm: at.y, acrossMm: at.x, way: 'back', lines: [] }
      : { label: 'Note, from the sill’s left end', valueMm: at.x, acrossMm: at.y, way: 'along', lines: [] },
    what: 'move a note'
  }
}

const standOffApplied = (gesture: Of<'stand-off'>, offMm: number): Applied => ({
  change: (design) => ok(standOff(design, gesture.dimensionId, offMm)),
  live: { label: 'Line, from what it measures', valueMm: offMm, acrossMm: 0, way: 'along', lines: [] },
  what: 'move a dimension line'
})
