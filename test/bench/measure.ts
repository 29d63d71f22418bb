export interface BenchRow {
  readonly name: string
  readonly minMs: number
  readonly medianMs: number
  /** Of the answers, so that a faster wrong run shows. */
  readonly checksum: number
}

const RUNS = 9

/** Least and median time of some runs of the same work. */
export const measure = (name: string, work: () => number): BenchRow => {
  const times: number[] = []
  let checksum = 0
  for (let run = 0; run < RUNS; run++) {
    const start = performance.now()
    checksum = work()
    times.push(performance.now() - start)
  }
  times.sort((a, b) => a - b)
  return { name, minMs: times[0] ?? 0, medianMs: times[RUNS >> 1] ?? 0, checksum }
}
