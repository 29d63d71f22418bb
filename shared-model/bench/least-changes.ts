import type { Budget } from '../outcome'
import { bestFirst } from './best-first'
import type { DrillWork, Stages } from './drill-work'
import type { ToolRun } from './tool-runs'
import { toolRuns } from './tool-runs'

export interface LeastChanges {
  /** Fewest tool changes found, and the proven bound; equal when proven. */
  readonly changes: number
  readonly lowerBound: number
  /** Some orders of fitting that need so few. */
  readonly stages: readonly Stages[]
}

/** Runs done (a bit each) and the tools in the drills, ascending. */
interface State {
  readonly done: bigint
  readonly tools: readonly number[]
}

/**
 * Answers: in which order must tools be fitted so that every operation gets its turn with the fewest changes?
 *
 * With one drill this is a shortest common supersequence of the chains (a collar: larger, smaller, larger) and of sets
 * with no order (a channel's saws); with more it is a paging problem over such orders. A fitted tool does all it can at
 * once, and a tool is fitted only when it has something to do: neither ever costs a change.
 * Bound, one drill: each tool is fitted again at least as often as the chain that needs it most often does;
 * more drills: each tool still needed and not fitted, once.
 */
export const leastChanges = (work: DrillWork, budget: Budget, orders: number): LeastChanges => {
  const runs = toolRuns(work)
  const all = (1n << BigInt(runs.length)) - 1n
  const bound = (state: State) => fitsLeft(runs, state, work.drills)
  const next = (state: State) => nextStates(runs, state, work.drills)
  const start: State = { done: 0n, tools: [] }
  const best = bestFirst<State>(
    { starts: [start], key: ({ done, tools }) => `${done} ${tools}`, bound, isEnd: ({ done }) => done === all, next },
    budget
  )
  if (!best.way) {
    const stages = greedily(runs, start, all, work.drills)
    return { changes: changesOf(stages), lowerBound: best.lowerBound, stages: [stages] }
  }
  const stages = enumerate(best.cost, orders, start, all, bound, next)
  return { changes: best.cost, lowerBound: best.cost, stages: stages.length > 0 ? stages : [stagesOf(best.way)] }
}

const isFree = (run: ToolRun, done: bigint): boolean => (run.before & ~done) === 0n

const closed = (runs: readonly ToolRun[], done: bigint, tools: readonly number[]): bigint => {
  let mask = done
  for (let grew = true; grew; ) {
    grew = false
    for (const [i, run] of runs.entries()) {
      const bit = 1n << BigInt(i)
      if (mask & bit || !tools.includes(run.tool) || !isFree(run, mask)) continue
      mask |= bit
      grew = true
    }
  }
  return mask
}

const nextStates = (runs: readonly ToolRun[], { done, tools }: State, drills: number) => {
  const wanted = new Set(
    runs.filter((run, i) => !(done & (1n << BigInt(i))) && isFree(run, done)).map(({ tool }) => tool)
  )
  return [...wanted].flatMap((tool) => {
    if (tools.length < drills) return [fitted(runs, done, [...tools, tool], 0)]
    return tools.map((_, drill) => fitted(runs, done, tools.with(drill, tool), 1))
  })
}

const fitted = (runs: readonly ToolRun[], done: bigint, tools: readonly number[], cost: number) => {
  const sorted = [...tools].sort((a, b) => a - b)
  return { state: { done: closed(runs, done, sorted), tools: sorted }, cost }
}

const fitsLeft = (runs: readonly ToolRun[], { done, tools }: State, drills: number): number => {
  const often = new Map<number, number>()
  const depth: Map<number, number>[] = []
  for (const [i, run] of runs.entries()) {
    const here = new Map<number, number>()
    depth.push(here)
    if (done & (1n << BigInt(i))) continue
    for (const [j, before] of runs.slice(0, i).entries()) {
      if (!(run.before & (1n << BigInt(j)))) continue
      for (const [tool, times] of depth[j] ?? []) {
        const more = tool === run.tool && before.tool !== tool ? times + 1 : times
        here.set(tool, Math.max(here.get(tool) ?? 0, more))
      }
    }
    here.set(run.tool, Math.max(here.get(run.tool) ?? 0, 1))
    for (const [tool, times] of here) often.set(tool, Math.max(often.get(tool) ?? 0, times))
  }
  const free = drills - tools.length
  const needed =
    drills === 1
      ? [...often.values()].reduce((sum, times) => sum + times, 0)
      : [...often.keys()].filter((tool) => !tools.includes(tool)).length
  return Math.max(0, needed - free)
}

const stagesOf = (way: readonly State[]): Stages => way.map(({ tools }) => tools).filter((tools) => tools.length > 0)

const changesOf = (stages: Stages): number =>
  stages.reduce((sum, tools, i) => sum + (i > 0 && tools.length === stages[i - 1]?.length ? 1 : 0), 0)

/** Goes depth first through all orders with the least changes until enough are found. */
const enumerate = (
  least: number,
  orders: number,
  start: State,
  all: bigint,
  bound: (state: State) => number,
  next: (state: State) => readonly { readonly state: State; readonly cost: number }[]
): readonly Stages[] => {
  const found: Stages[] = []
  const dead = new Set<string>()
  const visit = (way: readonly State[], cost: number): void => {
    const state = way[way.length - 1] as State
    if (state.done === all) {
      found.push(stagesOf(way))
      return
    }
    const key = `${state.done} ${state.tools} ${cost}`
    if (dead.has(key)) return
    const before = found.length
    for (const step of next(state)) {
      if (found.length >= orders) return
      if (cost + step.cost + bound(step.state) <= least) visit([...way, step.state], cost + step.cost)
    }
    if (found.length === before) dead.add(key)
  }
  visit([start], 0)
  return found
}

/** Without proof: always the tool with most to do; the tool fitted longest ago goes. */
const greedily = (runs: readonly ToolRun[], start: State, all: bigint, drills: number): Stages => {
  const stages: State[] = []
  for (let state = start; state.done !== all; ) {
    const steps = nextStates(runs, state, drills).sort((a, b) => bits(b.state.done) - bits(a.state.done))
    const step = steps[0]
    if (!step) break
    state = step.state
    stages.push(state)
  }
  return stagesOf(stages)
}

const bits = (mask: bigint): number => {
  let count = 0
  for (let rest = mask; rest; rest &= rest - 1n) count += 1
  return count
}
