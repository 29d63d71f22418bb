import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { evaluateHere } from '../../renderer/plan/evaluate-here'
import { createAppStore } from '../../renderer/store/store'
import { DEMOS, editChannels, editSill, editTimes, moveSite, placeChannel } from '../../shared-model/design'
import { ok } from '../../shared-model/outcome'
import type { Plan } from '../../shared-model/plan'
import { sixtyChannels } from './large-designs'
import type { BenchFigure } from './measure'

const ON = '2026-11-25'
const EDITS = 1_000
const MOST_TIMES = 1.3

/**
 * What the store and the live plan hold after 1,000 edits of 60 channels with 2,040 sites and as many undos, beside what
 * they held before; each after a collection. The edits are still there to be done again.
 */
export const benchMemory = (): readonly BenchFigure[] => {
  setFlagsFromString('--expose-gc')
  const collect: unknown = runInNewContext('gc')
  return DEMOS.map(({ id, design, workshop }) => {
    const store = createAppStore({ design: sixtyChannels(design), workshop }, ON)
    const live: { plan: Plan } = { plan: evaluateHere(store.getState().design, workshop, ON) }
    store.subscribe((state, before) => {
      if (state.design === before.design && state.workshop === before.workshop) return
      live.plan = evaluateHere(state.design, state.workshop, ON)
    })
    const edits = (count: number) => {
      for (let k = 0; k < count; k += 1) edit(store, k)
    }
    const undos = (count: number) => {
      for (let k = 0; k < count; k += 1) store.do.undo()
    }
    // A few to begin with, so that what is made once is there before.
    edits(20)
    undos(20)
    const before = heapMb(collect)
    edits(EDITS)
    const done = store.getState().history.past.length
    undos(done)
    const after = heapMb(collect)
    const times = after / before
    const verdict = times <= MOST_TIMES ? 'within' : 'NOT within'
    const figure = `${before.toFixed(1)} MB, then ${after.toFixed(1)} MB: ${times.toFixed(2)} times, ${verdict} ${MOST_TIMES}`
    return { name: `${id}, 60 channels and 2,040 sites, ${done} edits and undos [${live.plan.totals.plants}]`, figure }
  })
}

/** Every kind of edit that has something of its own kept for it, in turn. */
const edit = ({ do: act }: ReturnType<typeof createAppStore>, k: number): void => {
  const channel = `c${k % 60}`
  const step = k % 200
  if (k % 5 === 0) act.editDesign('Move', (design) => placeChannel(design, channel, 20 + step, 60 + 13 * step))
  if (k % 5 === 1) act.editDesign('Move site', (design) => moveSite(design, channel, `${channel}s3`, 380 + (k % 17)))
  if (k % 5 === 2)
    act.editDesign('Fill', (design) => editChannels(design, [channel], { fillShare: 0.5 + step / 1_000 }))
  if (k % 5 === 3) act.editDesign('Sill', (design) => editSill(design, { clearHeightMm: 800 + step }))
  if (k % 5 === 4)
    act.edit('Times', (pair) => {
      const made = editTimes(pair.workshop, { toolChangeS: 20 + step }, ON)
      return made.ok ? ok({ ...pair, workshop: made.value }) : made
    })
}

const heapMb = (collect: unknown): number => {
  if (typeof collect === 'function') for (let k = 0; k < 4; k += 1) collect()
  return process.memoryUsage().heapUsed / 2 ** 20
}
