export interface BenchRow {
  readonly name: string
  readonly minMs: number
  readonly medianMs: number
  /** Processor time of the process, which other work on the machine lengthens less than the time on the wall. */
  readonly cpu?: { readonly minMs: number; readonly medianMs: number }
  /** Of the answers, so that a faster wrong run shows. */
  readonly checksum: number
}

/** What is measured in something else than time. */
export interface BenchFigure {
  readonly name: string
  readonly figure: string
}

const RUNS = 9
/** Runs before the first that counts: the engine compiles what runs often. */
const WARM_UP = 160
const WARM_RUNS = 101

/** Least and median time of some runs of the same work. */
export const measure = (name: string, work: () => number): BenchRow => {
  const times: number[] = []
  let checksum = 0
  for (let run = 0; run < RUNS; run++) {
    const start = performance.now()
    checksum = work()
    times.push(performance.now() - start)
  }
  const { minMs, medianMs } = leastAndMedian(times)
  return { name, minMs, medianMs, checksum }
}

/**
 * Least and median time, on the wall and of the processor, of work that runs often, after a warm-up. What each run is given
 * is made before its clock starts.
 */
export const measureWarm = <Given>(
  name: string,
  given: (run: number) => Given,
  work: (given: Given) => number
): BenchRow => {
  const wall: number[] = []
  const cpu: number[] = []
  let checksum = 0
  for (let run = -WARM_UP; run < WARM_RUNS; run++) {
    const ready = given(run)
    const used = process.cpuUsage()
    const start = performance.now()
    const answer = work(ready)
    const wallMs = performance.now() - start
    const { user, system } = process.cpuUsage(used)
    if (run < 0) continue
    wall.push(wallMs)
    cpu.push((user + system) / 1000)
    checksum = (checksum + answer) % 1_000_000_007
  }
  return { name, ...leastAndMedian(wall), cpu: leastAndMedian(cpu), checksum }
}

export const leastAndMedian = (times: number[]): { readonly minMs: number; readonly medianMs: number } => {
  times.sort((a, b) => a - b)
  return { minMs: times[0] ?? 0, medianMs: times[times.length >> 1] ?? 0 }
}
