import { expect, test } from 'vitest'
import { evaluateHere } from '../../../renderer/plan/evaluate-here'
import { createPlanStore } from '../../../renderer/plan/plan-store'
import type { HeavyWorker } from '../../../renderer/plan/plan-worker-client'
import { NO_FILES } from '../../../renderer/store/files'
import { createAppStore } from '../../../renderer/store/store'
import { DEMOS, setDesignField } from '../../../shared-model/design'

const ON = '2026-05-01'
const never = <T>(): Promise<T> => new Promise(() => {})
const worker: HeavyWorker = {
  evaluate: never,
  prove: never,
  write: never,
  fits: never,
  pages: never,
  cancel: () => {}
}

test('a design that is opened has its board first, and what is made of it once the board is painted; an edit has both', () => {
  const [kitchen, market] = DEMOS
  if (kitchen === undefined || market === undefined) throw new Error('two demo designs are wanted')
  const waiting = new Set<() => void>()
  const painted = (act: () => void) => {
    waiting.add(act)
    return () => waiting.delete(act)
  }
  const paint = (): void => {
    const acts = [...waiting]
    waiting.clear()
    for (const act of acts) act()
  }
  const app = createAppStore({ design: kitchen.design, workshop: kitchen.workshop }, ON)
  const plans = createPlanStore(app, worker, painted)
  for (const { design, workshop } of [kitchen, market]) {
    if (design !== app.getState().design) app.do.load({ design, workshop }, NO_FILES)
    const board = plans.getState().live
    expect(board.channels).toHaveLength(design.channels.length)
    expect(board.bench.steps).toEqual([])
    paint()
    expect(plans.getState().live).toEqual(evaluateHere(design, workshop, ON))
    expect(plans.getState().live.bench.steps.length).toBeGreaterThan(0)
  }
  app.do.editDesign('name it', (design) => setDesignField(design, 'title', 'Another name'))
  expect(plans.getState().live.bench.steps.length).toBeGreaterThan(0)
  plans.cancel()
})
