import { expose } from 'comlink'
import type { Design, Workshop } from '../../shared-model/design'
import { type Fit, type FitWish, fits, notDominated } from '../../shared-model/fits'
import { type CsvTable, csvTables } from '../../shared-model/paper'
import { evaluate, type Plan } from '../../shared-model/plan'
import { type LadderStep, ladderSteps } from '../../shared-model/pricing'
import type { SheetData, SheetPart } from '../../shared-model/sheet'
import { buildSheet } from '../../shared-model/sheet'
import { batchAt } from './batch-at'

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

/** A design that holds the parts of a wish, and the wish. */
export interface FitAsk {
  readonly design: Design
  readonly wish: FitWish
}

export interface FoundFits {
  readonly fits: readonly Fit[]
  /** Whether the time ran out before every layout was tried. */
  readonly early: boolean
}

const NEVER = (): boolean => false

/** Heavy work; values only cross. */
const api = {
  /** The whole plan, cut bars and all, with this much work for the search. */
  evaluate: (design: Design, workshop: Workshop, on: string, work: number): Plan =>
    evaluate(design, workshop, on, { budget: { work, stop: NEVER } }),

  /** Layouts that fit the sill, of every wish together; none is beaten by another. */
  fits: (asks: readonly FitAsk[], workshop: Workshop, on: string, tries: number, mostMs: number): FoundFits => {
    const until = performance.now() + mostMs
    const stop = (): boolean => performance.now() > until
    const found = asks.flatMap(({ design, wish }) => {
      const each = fits(design, workshop, wish, on, { work: tries, stop })
      return each.ok ? each.value : []
    })
    return { fits: notDominated(found), early: stop() }
  },

  /** The ladder of batch sizes, each step told as soon as it is known; ending the worker stops it between two. */
  ladder: (
    design: Design,
    workshop: Workshop,
    on: string,
    sizes: readonly number[],
    work: number,
    tell: (step: LadderStep) => void
  ): void => {
    for (const step of ladderSteps(sizes, batchAt(design, workshop, on, { work, stop: NEVER }))) tell(step)
  },

  /** The build sheet's pages and its tables, from the same data as on the command line. */
  write: async (plan: Plan, design: Design, workshop: Workshop, wish: SheetWish): Promise<WrittenSheet> => {
    const { writePdf } = await import('./write-pdf')
    const { paper, ...options } = wish
    const sheet = buildSheet(plan, design, workshop, options)
    const { pdf, pages } = await writePdf(sheet, paper)
    return { pdf, pages, tables: csvTables(sheet) }
  },

  /** A document that is plain data already: labels, a quote. */
  pages: async (sheet: SheetData, paper: 'letter' | 'a4'): Promise<Pick<WrittenSheet, 'pdf' | 'pages'>> => {
    const { writePdf } = await import('./write-pdf')
    return writePdf(sheet, paper)
  }
}

export type PlanWorkerApi = typeof api

expose(api)
