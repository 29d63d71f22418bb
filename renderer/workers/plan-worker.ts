import { expose } from 'comlink'
import type { Design, Workshop } from '../../shared-model/design'
import { type CsvTable, csvTables } from '../../shared-model/paper'
import { evaluate, type Plan } from '../../shared-model/plan'
import type { SheetPart } from '../../shared-model/sheet'
import { buildSheet } from '../../shared-model/sheet'

export interface SheetWish {
  readonly paper: 'letter' | 'a4'
  readonly cost: boolean
  readonly parts: readonly SheetPart[]
  readonly batchNumber: string
}

export interface WrittenSheet {
  readonly pdf: Uint8Array<ArrayBuffer>
  readonly pages: number
  readonly tables: readonly CsvTable[]
}

const NEVER = (): boolean => false

/** Heavy work; values only cross. */
const api = {
  /** The whole plan, cut bars and all, with this much work for the search. */
  evaluate: (design: Design, workshop: Workshop, on: string, work: number): Plan =>
    evaluate(design, workshop, on, { budget: { work, stop: NEVER } }),

  /** The build sheet's pages and its tables, from the same data as on the command line. */
  write: async (plan: Plan, design: Design, workshop: Workshop, wish: SheetWish): Promise<WrittenSheet> => {
    const { writePdf } = await import('./write-pdf')
    const { paper, ...options } = wish
    const sheet = buildSheet(plan, design, workshop, options)
    const { pdf, pages } = await writePdf(sheet, paper)
    return { pdf, pages, tables: csvTables(sheet) }
  }
}

export type PlanWorkerApi = typeof api

expose(api)
