/** A run of a proof and the processor time it took, ms: a busy machine does not lengthen it. */
export interface TimedRun {
  readonly run: string
  readonly ms: number
}

/** What a share of a proof came to: counts by name, and the runs that took longest. Shares add up in any order. */
export interface Tally {
  readonly counts: Readonly<Record<string, number>>
  /** The slowest first, so that they can be made again and looked at. */
  readonly slowest: readonly TimedRun[]
}

/** How many of the slowest are kept. */
const SLOWEST = 6
/** A process that has done fewer runs than this is still being compiled: its times say nothing of the program. */
const WARM_AFTER = 100

export const NONE: Tally = { counts: {}, slowest: [] }

export function added(a: Tally, b: Tally): Tally {
  const counts = { ...a.counts }
  for (const [name, count] of Object.entries(b.counts)) counts[name] = (counts[name] ?? 0) + count
  return { counts, slowest: slowestOf([...a.slowest, ...b.slowest]) }
}

const slowestOf = (runs: readonly TimedRun[]): readonly TimedRun[] =>
  [...runs].sort((one, other) => other.ms - one.ms || (one.run < other.run ? -1 : 1)).slice(0, SLOWEST)

/** A tally being taken. */
export function taking() {
  const counts: Record<string, number> = {}
  let slowest: readonly TimedRun[] = []
  let runs = 0
  return {
    count: (name: string): void => {
      counts[name] = (counts[name] ?? 0) + 1
    },
    timed: (run: string, go: () => void): void => {
      const begun = process.cpuUsage()
      go()
      const { user, system } = process.cpuUsage(begun)
      const ms = (user + system) / 1000
      runs += 1
      if (runs > WARM_AFTER && ms > (slowest.at(SLOWEST - 1)?.ms ?? 0)) slowest = slowestOf([...slowest, { run, ms }])
    },
    tally: (): Tally => ({ counts, slowest })
  }
}

export const longestMs = ({ slowest }: Tally): number => slowest[0]?.ms ?? 0

/** Counts in words, the largest first, then the slowest runs. */
export const told = ({ counts, slowest }: Tally): string =>
  [
    ...Object.entries(counts)
      .sort(([, a], [, b]) => b - a)
      .map(([name, count]) => `${name} ${count}`),
    `slowest in ms of a processor: ${slowest.map(({ run, ms }) => `${ms.toFixed(0)} (${run})`).join(', ')}`
  ].join(', ')
