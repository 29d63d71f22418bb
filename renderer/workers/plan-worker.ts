import { expose } from 'comlink'
import type { Design, Workshop } from '../../shared-model/design'
import { type FitsFound, type FitWish, fits, notDominated } from '../../shared-model/fits'
import { type CsvTable, csvTables } from '../../shared-model/paper'
import { evaluate, type Plan } from '../../shared-model/plan'
import type { SheetData, SheetPart } from '../../shared-model/sheet'
import { buildSheet } from '../../shared-model/sheet'
import { prove } from './prove'

export interface SheetWish {
  readonly paper: 'letter' | 'a4'
  readonly cost: boolean
  readonly parts: readonly SheetPart[]
  readonly batchNumber: string
  readonly doneToo: boolean
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

export interface FoundFits extends FitsFound {
  /** What ended the search before every layout was tried; null where all were. */
  readonly ended: 'time' | 'tries' | null
}

const NEVER = (): boolean => false

/** Heavy work; values only cross. */
const api = {
  /** The whole plan, cut bars and all, with this much work for the search. */
  evaluate: (design: Design, workshop: Workshop, on: string, work: number): Plan =>
    evaluate(design, workshop, on, { budget: { work, stop: NEVER } }),

  prove,

  /** Layouts that fit the sill, of every wish together; none is beaten by another. */
  fits: (asks: readonly FitAsk[], workshop: Workshop, on: string, tries: number, mostMs: number): FoundFits => {
    const until = performance.now() + mostMs
    const stop = (): boolean => performance.now() > until
    const found = asks.flatMap(({ design, wish }) => {
      const each = fits(design, workshop, wish, on, { work: tries, stop })
      return each.ok ? [each.value] : []
    })
    const sum = (of: (each: FitsFound) => number): number => found.reduce((all, each) => all + of(each), 0)
    const [tried, possible] = [sum((each) => each.tried), sum((each) => each.possible)]
    const cut = found.some((each) => each.tried < Math.min(tries, each.possible))
    return {
      fits: notDominated(found.flatMap((each) => each.fits)),
      tried,
      possible,
      capped: found.some((each) => each.capped),
      ended: tried === possible ? null : cut ? 'time' : 'tries'
    }
  },

  /** The build sheet's pages and its tables, from the same data as on the command line; tells how much of it is drawn. */
  write: async (
    plan: Plan,
    design: Design,
    workshop: Workshop,
    wish: SheetWish,
    tell: (share: number) => void
  ): Promise<WrittenSheet> => {
    const { writePdf } = await import('./write-pdf')
    const { paper, ...options } = wish
    const sheet = buildSheet(plan, design, workshop, options)
    const { pdf, pages } = await writePdf(sheet, paper, false, tell)
    return { pdf, pages, tables: csvTables(sheet) }
  },

  /** A document that is plain data already: labels, a quote. */
  pages: async (
    sheet: SheetData,
    paper: 'letter' | 'a4',
    uncompressed = false
  ): Promise<Pick<WrittenSheet, 'pdf' | 'pages'>> => {
    const { writePdf } = await import('./write-pdf')
    return writePdf(sheet, paper, uncompressed)
  }
}

export type PlanWorkerApi = typeof api

expose(api)
