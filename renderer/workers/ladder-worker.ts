import { expose } from 'comlink'
import type { Design, Workshop } from '../../shared-model/design'
import { type LadderStep, ladderSteps } from '../../shared-model/pricing'
import { batchAt } from './batch-at'

const NEVER = (): boolean => false
let turn = 0

/** The ladder of batch sizes; it stays warm from one to the next, and is stopped between two steps. */
const api = {
  /** Each step is told as soon as it is known; another ladder, or `stop`, ends this one. */
  ladder: async (
    design: Design,
    workshop: Workshop,
    on: string,
    sizes: readonly number[],
    work: number,
    tell: (step: LadderStep) => void
  ): Promise<void> => {
    turn += 1
    const mine = turn
    for (const step of ladderSteps(sizes, batchAt(design, workshop, on, { work, stop: NEVER }))) {
      tell(step)
      await breath()
      if (mine !== turn) return
    }
  },

  stop: (): void => {
    turn += 1
  }
}

/** Lets a message in. */
const breath = (): Promise<void> => new Promise((go) => setTimeout(go, 0))

export type LadderWorkerApi = typeof api

expose(api)
