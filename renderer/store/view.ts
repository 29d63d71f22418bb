import type { PlanProblem } from '../../shared-model/plan'
import { SHEET_PARTS, type SheetPart } from '../../shared-model/sheet'

export const SCREENS = ['board', 'cuts', 'bench', 'materials', 'price', 'sheet', 'workshop'] as const
export type Screen = (typeof SCREENS)[number]

export const TOOLS = ['choose', 'channel', 'site', 'hand', 'measure', 'note'] as const
export type Tool = (typeof TOOLS)[number]

export type LightDark = 'system' | 'light' | 'dark'

/** What is shown and how; nothing of it belongs to a document. */
export interface View {
  readonly screen: Screen
  readonly tool: Tool
  readonly snap: boolean
  readonly canopies: boolean
  readonly lightDark: LightDark
  readonly findingsOpen: boolean
  /** Whether layouts that fit the sill are being looked at. */
  readonly fitsOpen: boolean
  /** Said politely to a screen reader. */
  readonly said: string
  /** A line at the foot of the window, with what can be done about it. */
  readonly notice: { readonly text: string } | { readonly problem: PlanProblem } | null
  readonly started: boolean
  /** Parts of the build sheet to write. */
  readonly sheetParts: readonly SheetPart[]
}

export const FIRST_VIEW: View = {
  screen: 'board',
  tool: 'choose',
  snap: true,
  canopies: true,
  lightDark: 'system',
  findingsOpen: false,
  fitsOpen: false,
  said: '',
  notice: null,
  started: false,
  sheetParts: SHEET_PARTS
}
