import { proxy, type Remote, wrap } from 'comlink'
import type { BarProgress } from '../../shared-model/cutting'
import type { Design, Workshop } from '../../shared-model/design'
import type { Plan } from '../../shared-model/plan'
import type { SheetData } from '../../shared-model/sheet'
import type { FitAsk, FoundFits, PlanWorkerApi, SheetWish, WrittenSheet } from '../workers/plan-worker'

/** Work for the first full plan, shown at once, and for the search that tries to prove it; a unit is about a microsecond. */
export const FIRST_WORK = 20_000
export const PROOF_WORK = 8_000_000

/** Layouts tried for one stock at most: what four rows of 23 sites give. Whoever waits that long is told. */
const FIT_TRIES = 17_549

/** Heavy work off the window's thread. Cancelling ends the worker; the next question starts a new one. */
export interface HeavyWorker {
  readonly evaluate: (design: Design, workshop: Workshop, on: string, work: number) => Promise<Plan>
  /** The search for a proof, telling how far each profile's is, and each plan whose bars are cheaper than before. */
  readonly prove: (
    design: Design,
    workshop: Workshop,
    on: string,
    work: number,
    tell: (profileId: string, progress: BarProgress) => void,
    tellBetter: (plan: Plan) => void
  ) => Promise<Plan>
  readonly write: (
    plan: Plan,
    design: Design,
    workshop: Workshop,
    wish: SheetWish,
    tell: (share: number) => void
  ) => Promise<WrittenSheet>
  readonly fits: (asks: readonly FitAsk[], workshop: Workshop, on: string, mostMs: number) => Promise<FoundFits>
  /** Writes a document that is plain data already. */
  readonly pages: (sheet: SheetData, paper: 'letter' | 'a4') => Promise<Pick<WrittenSheet, 'pdf' | 'pages'>>
  readonly cancel: () => void
}

interface Held {
  readonly worker: Worker
  readonly api: Remote<PlanWorkerApi>
  readonly calledOff: Promise<never>
  readonly giveUp: () => void
}

const GIVEN_UP = 'given up'

/** How a question that is called off fails. */
export const givenUp = (): Error => new Error(GIVEN_UP)

/** Whether a question failed only because it was called off. */
export const wasGivenUp = (error: unknown): boolean => error instanceof Error && error.message === GIVEN_UP

/** One worker that is kept, and its questions; asking while it is busy starts a fresh one. */
export function heavyWorker(): HeavyWorker {
  let held: Held | null = null
  let busy = false
  const cancel = (): void => {
    if (held === null || !busy) return
    held.worker.terminate()
    held.giveUp()
    held = null
    busy = false
  }
  const ask = async <T>(question: (api: Remote<PlanWorkerApi>) => Promise<T>): Promise<T> => {
    cancel()
    held ??= start()
    const mine = held
    busy = true
    try {
      return await Promise.race([question(mine.api), mine.calledOff])
    } finally {
      if (held === mine) busy = false
    }
  }
  return {
    cancel,
    evaluate: (design, workshop, on, work) => ask((api) => api.evaluate(design, workshop, on, work)),
    prove: (design, workshop, on, work, tell, tellBetter) =>
      ask((api) => api.prove(design, workshop, on, work, proxy(tell), proxy(tellBetter))),
    fits: (asks, workshop, on, mostMs) => ask((api) => api.fits(asks, workshop, on, FIT_TRIES, mostMs)),
    write: (plan, design, workshop, wish, tell) => ask((api) => api.write(plan, design, workshop, wish, proxy(tell))),
    pages: (sheet, paper) => ask((api) => api.pages(sheet, paper))
  }
}

function start(): Held {
  const worker = new Worker(new URL('../workers/plan-worker.ts', import.meta.url), { type: 'module' })
  let giveUp = (): void => {}
  const calledOff = new Promise<never>((_, reject) => {
    giveUp = () => reject(givenUp())
    worker.addEventListener('error', (event) => reject(new Error(event.message || 'the worker did not start')))
  })
  calledOff.catch(() => {})
  return { worker, api: wrap<PlanWorkerApi>(worker), calledOff, giveUp }
}
