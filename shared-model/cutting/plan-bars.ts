import type { Highs } from 'highs'
import type { Budget, FindingOf, Result } from '../outcome'
import { failed, ok } from '../outcome'
import { type BarJob, barJob } from './bar-job'
import { checkCutPlan } from './check-cut-plan'
import type { CuttingFindingCodes } from './codes'
import type { CutBar, CutPlan } from './cut-plan'
import { type BarsToCut, type CuttingProblem, firstProblem } from './first-problem'
import { mmFromNm } from './kerf'
import { layBars } from './lay-bars'
import type { BarSolution } from './solution'
import { type BarProgress, solveBars } from './solve-bars'
import { tidied } from './tidy'

export interface BarsPlanned {
  /** One for each profile that has pieces or cut bars, in the order of the pieces. */
  readonly cuts: readonly CutPlan[]
  readonly findings: readonly FindingOf<CuttingFindingCodes>[]
}

export interface PlanBarsAsk extends BarsToCut {
  /** Shared out over the profiles. A unit of work is a microsecond or two. */
  readonly budget: Budget
  /** The loaded solver library, where there is time to prove the last hard cases; left out: a live plan. */
  readonly highs?: Highs
  /** Told as a profile's plan or its bound gets better. */
  readonly report?: (profileId: string, progress: BarProgress) => void
  /** Told the bars of every profile whenever those of one get cheaper; profiles not come to yet have their quick plan. */
  readonly better?: (planned: BarsPlanned) => void
}

/** Work for the quick plan of all profiles together. */
const QUICK_WORK = 20_000

/**
 * The cut plan of every profile, worked out within a count of work: the same input and budget give the same plan. Lengths
 * in mm. Problems name the field that is out of range.
 */
export const planBars = (asked: PlanBarsAsk): Result<BarsPlanned, CuttingProblem> => {
  const jobs = barJobs(asked)
  if (!jobs.ok) return jobs
  const { highs, report } = asked
  const budget = { ...asked.budget, work: asked.budget.work / Math.max(1, jobs.value.length) }
  const better = asked.better && betterBars(jobs.value, asked.budget, asked.better)
  const solve = (job: BarJob): BarSolution => {
    const solution = solveBars(job.instance, {
      budget,
      ...(highs === undefined ? {} : { highs }),
      ...(report === undefined ? {} : { report: (progress) => report(job.profileId, wholeOf(job, progress)) }),
      ...(better === undefined ? {} : { better: (found) => better(job, found) })
    })
    better?.(job, solution)
    return solution
  }
  return ok(plansOf(jobs.value, solve))
}

/** Keeps the best solution of each profile, and tells the whole when a profile's gets cheaper than its quick one. */
const betterBars = (jobs: readonly BarJob[], { stop }: Budget, tell: (planned: BarsPlanned) => void) => {
  const known = new Map<BarJob, BarSolution>()
  const best = (job: BarJob): BarSolution => {
    const solution = known.get(job) ?? solveBars(job.instance, { budget: { work: QUICK_WORK / jobs.length, stop } })
    known.set(job, solution)
    return solution
  }
  return (job: BarJob, found: BarSolution): void => {
    const cheaper = found.uncut.length === 0 && found.cost < best(job).cost
    if (cheaper || (found.proven && found.cost <= best(job).cost)) known.set(job, found)
    if (cheaper) tell(plansOf(jobs, best))
  }
}

/** Told in what the whole plan is compared by: with what is spent on pinned and cut bars already. */
const wholeOf = ({ fixedValue }: BarJob, progress: BarProgress): BarProgress => ({
  ...progress,
  cost: progress.cost + fixedValue,
  lowerBound: progress.lowerBound + fixedValue
})

/** One whole-number instance for each profile. */
const barJobs = (asked: BarsToCut): Result<readonly BarJob[], CuttingProblem> => {
  const problem = firstProblem(asked)
  if (problem) return failed(problem)
  const done = asked.done ?? []
  const profiles = [...new Set([...asked.pieces, ...done].map(({ profileId }) => profileId))]
  return ok(
    profiles.map((profileId) => {
      const mine = <T extends { readonly profileId: string }>(list: readonly T[]): T[] =>
        list.filter((each) => each.profileId === profileId)
      return barJob({
        profileId,
        pieces: mine(asked.pieces),
        stock: mine(asked.stock),
        rack: mine(asked.rack),
        setup: asked.setup,
        done: mine(done)
      })
    })
  )
}

/** Plans from solved instances, bars lettered over all profiles. */
const plansOf = (jobs: readonly BarJob[], solve: (job: BarJob) => BarSolution): BarsPlanned => {
  const cuts: CutPlan[] = []
  const findings: FindingOf<CuttingFindingCodes>[] = []
  let letters = 0
  for (const job of jobs) {
    const solution = tidySolution(job, solve(job))
    const bars = layBars(job, solution, letters)
    letters += bars.length
    const cut = cutPlan(job, solution, bars)
    cuts.push(cut)
    findings.push(...job.findings, ...solutionFindings(job, solution, cut))
  }
  return { cuts, findings }
}

const tidySolution = (job: BarJob, solution: BarSolution): BarSolution => {
  const patterns = tidied(job.instance, solution.patterns)
  const { cost } = checkCutPlan(job.instance, patterns)
  return { ...solution, patterns, cost, proven: cost <= solution.lowerBound }
}

const cutPlan = (job: BarJob, solution: BarSolution, bars: readonly CutBar[]): CutPlan => {
  const bought = bars.filter((bar) => !bar.isOffcut)
  const kept = bars.filter((bar) => bar.keep)
  const stopSettingsMm: number[] = []
  for (const { lengthMm } of bars.flatMap((bar) => bar.pieces)) {
    if (stopSettingsMm.at(-1) !== lengthMm) stopSettingsMm.push(lengthMm)
  }
  const sum = (list: readonly number[]): number => list.reduce((total, each) => total + each, 0)
  const stockMm = sum(bars.map((bar) => bar.lengthMm))
  const piecesMm = sum(bars.flatMap((bar) => bar.pieces.map((piece) => piece.lengthMm)))
  const keptMm = sum(kept.map((bar) => bar.leftoverMm))
  const longestMm = mmFromNm(Math.max(0, ...job.instance.stock.map(({ length, trim }) => length - trim)))
  const short = solution.uncut.flatMap(({ demand, qty }) => (job.cut[demand] ?? []).slice(-qty).flat())
  return {
    profileId: job.profileId,
    kerfMm: mmFromNm(job.instance.kerf),
    bars,
    uncut: [
      ...job.uncut,
      ...short.map((piece) => ({ pieceId: piece.pieceId, lengthMm: mmFromNm(piece.length), longestMm }))
    ],
    costMinor: job.priced ? sum(bars.map((bar) => bar.costMinor ?? 0)) : null,
    keptWorthMinor: sum(bars.map((bar) => bar.keptWorthMinor)),
    value: solution.cost + job.fixedValue,
    lowerBound: solution.lowerBound + job.fixedValue,
    proven: solution.proven,
    certificate: solution.certificate,
    instance: job.instance,
    patterns: new Set(bars.map((bar) => `${bar.lengthMm} ${bar.pieces.map((piece) => piece.lengthMm)}`)).size,
    longestOffcutMm: Math.max(0, ...kept.map((bar) => bar.leftoverMm)),
    fewestBars: bars.length <= leastBars(job) ? 'proven' : 'best-effort',
    stopSettingsMm,
    boughtMm: sum(bought.map((bar) => bar.lengthMm)),
    wasteMm: Math.max(0, stockMm - piecesMm - keptMm),
    keptMm
  }
}

/** The pieces' length alone asks for so many of the longest bars. */
const leastBars = ({ instance, sources }: BarJob): number => {
  const grown = instance.demand.reduce((sum, { length, qty }) => sum + qty * (length + instance.kerf), 0)
  const longest = instance.stock.reduce((most, { length, trim }) => Math.max(most, length - trim), 0)
  const open = sources.filter(({ kind }) => kind === 'open').length
  return longest > 0 && open === 0 ? Math.ceil(grown / (longest + instance.kerf)) : open
}

const solutionFindings = (job: BarJob, solution: BarSolution, cut: CutPlan): FindingOf<CuttingFindingCodes>[] => {
  const findings: FindingOf<CuttingFindingCodes>[] = []
  const { profileId } = job
  if (solution.uncut.length > 0) {
    const pieces = solution.uncut.reduce((sum, { qty }) => sum + qty, 0)
    const lengthMm = mmFromNm(Math.max(...solution.uncut.map(({ demand }) => job.instance.demand[demand]?.length ?? 0)))
    findings.push({
      code: 'stock-runs-out',
      severity: 'stop',
      figures: { profileId, pieces, lengthMm },
      where: { field: 'stock' }
    })
  }
  if (!cut.proven) {
    const { value, lowerBound } = cut
    const gapPercent = lowerBound > 0 ? ((value - lowerBound) / lowerBound) * 100 : 100
    findings.push({
      code: 'cut-plan-not-proven',
      severity: 'note',
      figures: { profileId, value, lowerBound, gapPercent },
      where: {}
    })
  }
  return findings
}
