import loadHighs, { type Highs } from 'highs'
import type { ReadInstance } from '../../main/commands/cutting-instance'
import { type CutInstance, solveBars } from '../../shared-model/cutting'
import { aBar, anOffcut, aPiece, planned } from '../cutting/a-shop'
import { referenceCases } from '../cutting/reference-cases'
import { solveArcFlow } from './arc-flow'
import type { BenchRow } from './measure'

const ARC_FLOW_LIMIT_S = 60
const LARGE_LIMIT_MS = 10_000

/** Times of cutting on the reference cases, and how much faster it is than the plain arc-flow model in the same run. */
export const benchCutting = async (arcFlowLimitS = ARC_FLOW_LIMIT_S): Promise<readonly BenchRow[]> => {
  const highs = await loadHighs()
  solveAll(highs, referenceCases('workshop').slice(0, 8), LARGE_LIMIT_MS)
  const files = ['workshop', 'workshop-large', 'textbook', 'scip-small', 'full-bars', 'triples']
  return [livePlan(), ...files.map((file) => fileRow(highs, file)), againstArcFlow(highs, arcFlowLimitS)]
}

interface Solved {
  readonly ms: number
  readonly cost: number
  readonly proven: boolean
  readonly gap: number
}

const solveOne = (highs: Highs, instance: CutInstance, limitMs: number): Solved => {
  const began = performance.now()
  const until = began + limitMs
  const solved = solveBars(instance, { highs, budget: { work: 1e12, stop: () => performance.now() > until } })
  const gap = solved.cost > 0 ? (solved.cost - solved.lowerBound) / solved.cost : 0
  return { ms: performance.now() - began, cost: solved.cost, proven: solved.proven, gap }
}

const solveAll = (highs: Highs, cases: readonly ReadInstance[], limitMs: number): Solved[] =>
  cases.map(({ instance }) => solveOne(highs, instance, limitMs))

const fileRow = (highs: Highs, file: string): BenchRow => {
  const solved = solveAll(highs, referenceCases(file), LARGE_LIMIT_MS)
  const proven = solved.filter((one) => one.proven).length
  const widest = Math.max(...solved.map(({ gap }) => gap)) * 100
  const times = sorted(solved.map(({ ms }) => ms))
  const late = times[Math.ceil(times.length * 0.95) - 1] ?? 0
  return {
    ...spread(times),
    checksum: solved.reduce((sum, { cost }) => sum + cost, 0),
    name: `${file}: ${proven} of ${solved.length} proven in 10 s, widest gap ${widest.toFixed(2)} %, 95th percentile ${late.toFixed(0)} ms, largest ${(times.at(-1) ?? 0).toFixed(0)} ms`
  }
}

/** Where the arc-flow model is solved within its limit: its time over ours, both for the same least cost. */
const againstArcFlow = (highs: Highs, limitS: number): BenchRow => {
  const cases = [
    ...referenceCases('textbook'),
    ...referenceCases('scip-small'),
    ...referenceCases('triples').filter(({ instance }) => instance.demand.length < 60),
    ...referenceCases('workshop').filter(({ instance }) => instance.demand.length <= 6)
  ]
  const ratios: number[] = []
  let checksum = 0
  let unlike = 0
  for (const { instance } of cases) {
    const began = performance.now()
    const cost = solveArcFlow(highs, instance, limitS)
    const ms = performance.now() - began
    if (cost === null) continue
    const ours = solveOne(highs, instance, limitS * 1000)
    if (ours.cost !== cost || !ours.proven) unlike++
    ratios.push(ms / ours.ms)
    checksum += cost
  }
  const { minMs: least, medianMs: median } = spread(sorted(ratios))
  return {
    minMs: least,
    medianMs: median,
    checksum,
    name: `times faster than the plain arc-flow model (ratios, not ms), which solved ${ratios.length} of ${cases.length} in ${limitS} s; ${unlike} with another optimum`
  }
}

/** The plan that is drawn while designing: fourteen pieces, two stock lengths, an offcut. */
const livePlan = (): BenchRow => {
  const lengths = [812.8, 863.6, 609.6, 1143]
  const pieces = Array.from({ length: 14 }, (_, at) => aPiece(`p${at}`, lengths[at % 4] ?? 0))
  const stock = [aBar('long', 3048, 1499), aBar('short', 2438.4, 1299)]
  const times: number[] = []
  let checksum = 0
  for (let run = 0; run < 25; run++) {
    const began = performance.now()
    const { cuts } = planned({ pieces, stock, rack: [anOffcut('o', 1200, 200)], budget: LIVE })
    times.push(performance.now() - began)
    checksum = cuts[0]?.value ?? 0
  }
  const name = 'live plan of fourteen pieces from two stock lengths and an offcut, kept leftovers credited'
  return { name, ...spread(sorted(times)), checksum }
}

const LIVE = { work: 8_000, stop: () => false }

const sorted = (list: readonly number[]): number[] => [...list].sort((a, b) => a - b)

const spread = (times: readonly number[]): { minMs: number; medianMs: number } => ({
  minMs: times[0] ?? 0,
  medianMs: times[Math.floor(times.length / 2)] ?? 0
})
