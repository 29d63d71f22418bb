import { proxy, type Remote, wrap } from 'comlink'
import type { Design, Workshop } from '../../shared-model/design'
import type { LadderStep } from '../../shared-model/pricing'
import type { LadderWorkerApi } from '../workers/ladder-worker'
import { FIRST_WORK, givenUp } from './plan-worker-client'

/** The ladder off the window's thread. Asking again, or cancelling, ends the one that runs; its worker is kept. */
export interface LadderWorker {
  /** Re-solves the build for each batch size, telling each step when it is known. */
  readonly ladder: (
    design: Design,
    workshop: Workshop,
    on: string,
    sizes: readonly number[],
    tell: (step: LadderStep) => void
  ) => Promise<void>
  readonly cancel: () => void
}

interface Held {
  readonly api: Remote<LadderWorkerApi>
  readonly broken: Promise<never>
}

export function ladderWorker(): LadderWorker {
  let held: Held | null = null
  let giveUp: (() => void) | null = null
  const cancel = (): void => {
    if (giveUp === null) return
    void held?.api.stop()
    giveUp()
    giveUp = null
  }
  return {
    cancel,
    ladder: async (design, workshop, on, sizes, tell) => {
      cancel()
      held ??= start()
      let mine: (() => void) | null = null
      const calledOff = new Promise<never>((_, reject) => {
        mine = () => reject(givenUp())
      })
      giveUp = mine
      try {
        await Promise.race([
          held.api.ladder(design, workshop, on, sizes, FIRST_WORK, proxy(tell)),
          calledOff,
          held.broken
        ])
      } finally {
        if (giveUp === mine) giveUp = null
      }
    }
  }
}

function start(): Held {
  const worker = new Worker(new URL('../workers/ladder-worker.ts', import.meta.url), { type: 'module' })
  const broken = new Promise<never>((_, reject) => {
    worker.addEventListener('error', (event) => reject(new Error(event.message || 'the worker did not start')))
  })
  broken.catch(() => {})
  return { api: wrap<LadderWorkerApi>(worker), broken }
}
