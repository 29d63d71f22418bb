import { expose, proxy, wrap } from 'comlink'
import { expect, test } from 'vitest'
import { createPlanStore } from '../../../renderer/plan/plan-store'
import type { HeavyWorker } from '../../../renderer/plan/plan-worker-client'
import { createAppStore } from '../../../renderer/store/store'
import { prove } from '../../../renderer/workers/prove'
import type { CutPlan } from '../../../shared-model/cutting'
import { DEMOS } from '../../../shared-model/design'
import { evaluate, type Plan } from '../../../shared-model/plan'

const ON = '2026-05-01'
/** Nothing is painted here. */
const AT_ONCE = (act: () => void) => {
  act()
  return () => {}
}
const QUICK = { work: 20_000, stop: () => false }

/** Twenty channels of twenty lengths, three units: too many for the quick plan to be the best. */
const [demo] = DEMOS
const first = demo?.design.channels[0]
if (demo === undefined || first === undefined) throw new Error('the demo is missing')
const { workshop } = demo
const channels = Array.from({ length: 20 }, (_, k) => ({
  ...first,
  id: `c${k}`,
  sites: [],
  lengthMm: 320 + ((k * 53) % 170) * 3
}))
const design = { ...demo.design, quantity: 3, channels }
const quick = evaluate(design, workshop, ON, { budget: QUICK })

/** The same search again tells the same. */
const better: Plan[] = []
prove(
  design,
  workshop,
  ON,
  600_000,
  () => {},
  (plan) => better.push(plan)
)

const barsValue = (plan: Plan): number => plan.cuts.reduce((sum, { value }) => sum + value, 0)
const pieceIds = (plan: Plan): string[] =>
  plan.cuts.flatMap(({ bars }) => bars.flatMap(({ pieces }) => pieces.map(({ pieceId }) => pieceId))).sort()
/** Nothing left uncut, and a bound that the plan does not beat. */
const isWhole = ({ uncut, lowerBound, value }: CutPlan): boolean => uncut.length === 0 && lowerBound <= value

test('a search for a proof tells each cheaper plan on the way, whole, across the worker’s door', async () => {
  const { port1, port2 } = new MessageChannel()
  expose({ prove }, port1)
  const told: Plan[] = []
  const door = wrap<{ prove: typeof prove }>(port2)
  const end = await door.prove(
    design,
    workshop,
    ON,
    600_000,
    proxy(() => {}),
    proxy((plan: Plan) => told.push(plan))
  )
  // A call back has a port of its own: what was told may come in after the end.
  while (told.length < better.length) await new Promise((go) => setImmediate(go))
  port1.close()
  port2.close()
  expect(better.length).toBeGreaterThan(0)
  expect(told).toEqual(better)
  const values = [quick, ...told].map(barsValue)
  expect(values.every((value, k) => k === 0 || value < (values[k - 1] ?? 0))).toBe(true)
  expect(barsValue(end)).toBe(values.at(-1))
  for (const plan of told) {
    expect(pieceIds(plan)).toEqual(pieceIds(quick))
    expect(plan.cuts.every(isWhole)).toBe(true)
    // The bill and the price are those of the bars told.
    expect(plan.bill.lines.filter(({ need }) => need === 'stock').length).toBeGreaterThan(0)
    expect(plan.totals).toEqual({ ...end.totals, notes: plan.totals.notes })
  }
})

test('stopping the search keeps the best plan that it has told', async () => {
  const best = better.at(-1)
  if (best === undefined) throw new Error('no better plan was found')
  let asked = (): void => {}
  const isAsked = new Promise<void>((go) => {
    asked = go
  })
  const never = <T>(): Promise<T> => new Promise(() => {})
  /** A worker whose search tells what it found and then goes on without end. */
  const worker: HeavyWorker = {
    evaluate: () => Promise.resolve(quick),
    prove: (_design, _workshop, _on, _work, _tell, tellBetter) => {
      for (const plan of better) tellBetter(plan)
      asked()
      return never()
    },
    write: never,
    fits: never,
    pages: never,
    cancel: () => {}
  }
  const plans = createPlanStore(createAppStore({ design, workshop }, ON), worker, AT_ONCE)
  plans.again()
  await isAsked
  expect(plans.getState()).toMatchObject({ proving: true, full: best })
  plans.cancel()
  expect(plans.getState()).toMatchObject({ working: false, proving: false, stale: false, full: best })
  expect(plans.getState().fullOf?.plan).toBe(best)
  expect(barsValue(best)).toBeLessThan(barsValue(quick))
})

test('a plan told late does not take the place of the one that the search ended with', async () => {
  const best = better.at(-1)
  if (best === undefined) throw new Error('no better plan was found')
  let tellLate = (_plan: Plan): void => {}
  const never = <T>(): Promise<T> => new Promise(() => {})
  const worker: HeavyWorker = {
    evaluate: () => Promise.resolve(quick),
    prove: (_design, _workshop, _on, _work, _tell, tellBetter) => {
      tellLate = tellBetter
      return Promise.resolve(best)
    },
    write: never,
    fits: never,
    pages: never,
    cancel: () => {}
  }
  const plans = createPlanStore(createAppStore({ design, workshop }, ON), worker, AT_ONCE)
  const ended = new Promise<void>((go) => plans.subscribe((state) => state.full === best && !state.working && go()))
  plans.again()
  await ended
  tellLate(quick)
  expect(plans.getState().full).toBe(best)
  plans.cancel()
})
