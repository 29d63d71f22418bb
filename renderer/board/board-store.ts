import { createStore } from 'zustand/vanilla'
import type { Anchor } from '../../shared-model/design'
import type { Extent, Point, Scale, Size } from './scale'
import type { SnapLine } from './snapping'

/** What the hand is doing. Places are in millimetres on the sill, but for panning, which is in the picture. */
export type Gesture =
  | { readonly kind: 'pan'; readonly last: Point }
  | { readonly kind: 'box'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'draw'; readonly from: Point; readonly to: Point }
  | {
      readonly kind: 'move'
      readonly ids: readonly string[]
      readonly from: Point
      readonly start: Extent
      readonly copy: boolean
    }
  | {
      readonly kind: 'pull'
      readonly channelId: string
      readonly end: 'datum' | 'far'
      readonly from: Point
      readonly startMm: number
      /** Where the end's outside face lay, along the axis that the channel runs on. */
      readonly faceMm: number
    }
  | {
      readonly kind: 'site'
      readonly channelId: string
      readonly siteIds: readonly string[]
      readonly siteId: string
      readonly from: Point
      readonly startMm: number
    }
  | {
      readonly kind: 'opening'
      readonly channelId: string
      readonly openingId: string
      readonly from: Point
      readonly startMm: number
    }
  | { readonly kind: 'note'; readonly noteId: string; readonly from: Point; readonly start: Point }
  | {
      readonly kind: 'stand-off'
      readonly dimensionId: string
      readonly upright: boolean
      readonly from: Point
      readonly startMm: number
    }

/** What a gesture shows while it lasts: the figure that follows the hand and what it was drawn to. */
export interface Live {
  readonly label: string
  readonly valueMm: number
  /** How far the hand has moved the other way, which a typed figure leaves as it is. */
  readonly acrossMm: number
  /** Which way the figure goes: along the sill (or the channel), or from its front to the glass. */
  readonly way: 'along' | 'back'
  readonly lines: readonly SnapLine[]
}

export interface BoardState {
  readonly size: Size
  readonly scale: Scale
  /** Whether the hand has zoomed or panned; until then the picture is fitted again when the window changes. */
  readonly placed: boolean
  readonly gesture: Gesture | null
  readonly live: Live | null
  /** A figure typed while dragging; it sets the live one exactly. */
  readonly typed: string
  /** Whether the first picture stands on the window: what is beside the board comes after it. */
  readonly drawn: boolean
  /** The first of two things that a dimension is to be pinned between. */
  readonly pinFrom: Anchor | null
}

export const boardStore = createStore<BoardState>(() => ({
  size: { width: 0, height: 0 },
  scale: { pxPerMm: 0.6, originX: 60, originY: 300 },
  placed: false,
  gesture: null,
  live: null,
  typed: '',
  drawn: false,
  pinFrom: null
}))
