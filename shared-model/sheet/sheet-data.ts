import type { LengthShows } from '../units'
import type { Drawing, PointMm, Shape } from './drawing'

/** The parts of a build sheet, each of which can be left out. */
export const SHEET_PARTS = [
  'build',
  'cuts',
  'drilling',
  'collars',
  'templates',
  'steps',
  'cautions',
  'materials',
  'first-fill',
  'labels',
  'sources',
  'batch-record',
  'buyers-card'
] as const
export type SheetPart = (typeof SHEET_PARTS)[number]

/** The printed document as plain data: no page, font or unit is left to decide but the paper's size. */
export interface SheetData {
  readonly language: 'en'
  readonly titleBlock: TitleBlock
  readonly sections: readonly SheetSection[]
  readonly templates: readonly ChannelTemplate[]
  /** Strokes along a template's baseline: every so far from the datum end, with what a rule reads there. */
  readonly baselineStepMm: number
  readonly shows: LengthShows
}

/** Fields of ISO 7200; the sheet's own number and the count are set when pages are made. */
export interface TitleBlock {
  readonly title: string
  readonly number: string
  readonly revision: string
  /** ISO date. */
  readonly date: string
  readonly maker: string
  readonly documentType: string
  /** Empty, with the graduation, on a page without lengths. */
  readonly units: string
  readonly graduation: string
  readonly tolerance: string
  readonly scale: string
  readonly quantity: string
}

export interface SheetSection {
  readonly part: SheetPart
  /** `2`, and so on; empty on a page that stands apart. */
  readonly number: string
  readonly heading: string
  readonly startsPage: boolean
  readonly blocks: readonly Block[]
}

export type Block =
  | TextBlock
  | FactsBlock
  | BigBlock
  | TableBlock
  | FigureBlock
  | CautionBlock
  | LabelsBlock
  | TitleFields

/** The title block itself: only on the first sheet. */
interface TitleFields {
  readonly kind: 'title-fields'
}

export interface TextBlock {
  readonly kind: 'text'
  readonly heading: string
  readonly paragraphs: readonly string[]
  readonly strong: boolean
  /** The heading stands at the head of the first paragraph instead of above it. */
  readonly runIn?: boolean
  /** A card that does not fit on one page is parted above this block. */
  readonly parts?: boolean
}

/** Named figures side by side. */
export interface FactsBlock {
  readonly kind: 'facts'
  readonly heading: string
  readonly columns: 2 | 3 | 4
  readonly facts: readonly { readonly name: string; readonly value: string }[]
}

/** Figures to read from across the room. */
export interface BigBlock {
  readonly kind: 'big'
  readonly figures: readonly { readonly name: string; readonly value: string; readonly note: string }[]
}

export interface Cell {
  readonly text: string
  /** A bold word before the text. */
  readonly lead?: string
  /** The figure behind the text, unrounded, in the column's `exactUnit`. */
  readonly exact?: number
  readonly strong?: boolean
  /** A second line below the first. */
  readonly under?: string
}

export interface Column {
  readonly head: string
  readonly align: 'left' | 'right' | 'centre'
  /** On paper; `rest` shares what is left. */
  readonly widthMm: number | 'rest'
  /** Set where cells carry exact figures: `mm`, `g`, `L`. */
  readonly exactUnit?: string
  /** In the table's file only: what another table on the page says already. */
  readonly fileOnly?: boolean
}

export interface TableBlock {
  readonly kind: 'table'
  /** File name of its CSV text, without the ending; empty where a table is not worth a file. */
  readonly name: string
  readonly heading: string
  readonly note: string
  readonly columns: readonly Column[]
  readonly rows: readonly (readonly Cell[])[]
  /** Rows that stand side by side on paper, read from left to right; one when left out. */
  readonly abreast?: 2 | 3
  /** Rows stand close together. */
  readonly close?: boolean
}

export interface FigureBlock {
  readonly kind: 'figure'
  readonly heading: string
  readonly caption: string
  readonly startsPage: boolean
  readonly drawing: Drawing
}

export interface CautionBlock {
  readonly kind: 'caution'
  readonly signalWord: string
  readonly text: string
  readonly reason: string
  /** `ISO 7010: W022, M004`; empty when it has no sign. */
  readonly signs: string
  /** `[2] [5]`, numbers in the list of sources. */
  readonly sources: string
  readonly bold: boolean
}

export interface LabelsBlock {
  readonly kind: 'labels'
  readonly labels: readonly { readonly title: string; readonly lines: readonly string[] }[]
}

/**
 * One face of a channel at 1:1. On the long faces (a round pipe's: its surface unrolled) x runs from the datum end; y
 * across from the centre line (top, bottom, pipe), or down from the channel's upper edge (front, back). On an end x runs
 * up from the underside and y across from the middle. `around` is a band for a pipe: x is arc length from the crown.
 */
export interface ChannelTemplate {
  readonly channelId: string
  readonly mark: string
  readonly name: string
  readonly face: 'top' | 'front' | 'back' | 'bottom' | 'datum-end' | 'far-end' | 'around'
  readonly wraps: boolean
  /** Where x begins, as it stands on the line there, and as it follows a distance: `match 220 mm from datum`. */
  readonly zero: { readonly label: string; readonly from: string }
  readonly lengthMm: number
  readonly fromYMm: number
  readonly toYMm: number
  readonly holes: readonly TemplateHole[]
  /** Edges, folds and closure lines that belong to every tile. */
  readonly shapes: readonly Shape[]
}

export interface TemplateHole {
  readonly mark: string
  readonly atMm: number
  readonly acrossMm: number
  readonly diameterMm: number
  readonly label: string
  /** Outline on a pipe's unrolled surface; empty on a flat face, where the hole is a circle. */
  readonly outlineMm: readonly PointMm[]
}
