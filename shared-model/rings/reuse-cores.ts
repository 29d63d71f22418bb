import type { Mm } from '../units'

/** Collars of one kind: outer and inner saw by diameter. A plain disc has no inner saw and drops no core. */
export interface CoreCollar {
  readonly id: string
  readonly outerMm: number
  readonly innerMm: number | null
  readonly count: number
  /** Core left by the inner saw where its kerf differs from the one given for all. */
  readonly coreMm?: number | null
}

export interface CoreReuse {
  readonly uses: readonly {
    readonly id: string
    readonly fromId: string
    readonly count: number
    /** The core already is the blank: no outer cut. */
    readonly sameSaw: boolean
  }[]
  readonly fromCore: number
  readonly fromSheet: number
  /** Σ D1² of the collars that need no sheet, in mm². */
  readonly savedSquareMm: number
}

/** Sizes that differ by less than this are one size. */
const SAME_MM = 1e-6

/**
 * Which collars to cut from the cores of others, so that the squares of the outer saws saved add up to the most.
 * A core of the inner saw less two kerfs serves a collar whose outer saw and a web on each side it holds; with
 * `sameSaw` it also serves where the inner saw of the one is the outer saw of the other: it then is the blank.
 * Exact: the sets of collars that cores can serve form a matroid, so collars by falling diameter, each accepted when an
 * augmenting path places it, weigh the most. A collar cut from a core drops its own core; sizes fall, so no ring closes.
 * @source core-greedy
 */
export const reuseCores = (
  collars: readonly CoreCollar[],
  kerfMm: Mm,
  webMm: Mm,
  options: { readonly sameSaw: boolean }
): CoreReuse => {
  const placed = collars.map(() => new Array<number>(collars.length).fill(0))
  const used = new Array<number>(collars.length).fill(0)
  const serves = (from: CoreCollar, to: CoreCollar) =>
    coreOf(from, kerfMm) + SAME_MM >= to.outerMm + 2 * webMm || (options.sameSaw && isBlankOf(from, to))
  const falling = collars.map((_, i) => i).sort((a, b) => outerOf(collars, b) - outerOf(collars, a) || a - b)
  for (const receiver of falling) {
    let wanted = countOf(collars, receiver)
    while (wanted > 0) {
      const moved = augment(collars, placed, used, receiver, wanted, serves)
      if (moved === 0) break
      wanted -= moved
    }
  }
  const uses = placed.flatMap((row, to) =>
    row.flatMap((count, from) => {
      const receiver = collars[to]
      const source = collars[from]
      if (count === 0 || !receiver || !source) return []
      return [{ id: receiver.id, fromId: source.id, count, sameSaw: options.sameSaw && isBlankOf(source, receiver) }]
    })
  )
  const fromCore = uses.reduce((sum, use) => sum + use.count, 0)
  const all = collars.reduce((sum, collar) => sum + collar.count, 0)
  const savedSquareMm = placed.reduce(
    (sum, row, to) => sum + row.reduce((a, b) => a + b, 0) * outerOf(collars, to) ** 2,
    0
  )
  return { uses, fromCore, fromSheet: all - fromCore, savedSquareMm }
}

const outerOf = (collars: readonly CoreCollar[], i: number): number => collars[i]?.outerMm ?? 0
const countOf = (collars: readonly CoreCollar[], i: number): number => collars[i]?.count ?? 0

const coreOf = (collar: CoreCollar, kerfMm: number): number => {
  if (collar.innerMm === null) return Number.NEGATIVE_INFINITY
  return collar.coreMm ?? collar.innerMm - 2 * kerfMm
}

const isBlankOf = (from: CoreCollar, to: CoreCollar): boolean =>
  from.innerMm !== null && Math.abs(from.innerMm - to.outerMm) < SAME_MM && to.outerMm < from.outerMm

/** One shortest augmenting path from the receiver to a kind with a core to spare; returns how many it moved. */
const augment = (
  collars: readonly CoreCollar[],
  placed: number[][],
  used: number[],
  receiver: number,
  wanted: number,
  serves: (from: CoreCollar, to: CoreCollar) => boolean
): number => {
  /** Source kind → the receiver that reached it; receiver kind → the source that it gives up. */
  const reachedBy = new Map<number, number>()
  const givesUp = new Map<number, number>()
  const queue = [receiver]
  const seen = new Set(queue)
  for (let at = 0; at < queue.length; at++) {
    const to = queue[at] as number
    const toCollar = collars[to] as CoreCollar
    for (let from = 0; from < collars.length; from++) {
      const source = collars[from] as CoreCollar
      if (from === to || reachedBy.has(from) || source.count === 0 || !serves(source, toCollar)) continue
      reachedBy.set(from, to)
      if ((used[from] as number) < source.count) return move(collars, placed, used, from, wanted, reachedBy, givesUp)
      for (let other = 0; other < collars.length; other++) {
        if (seen.has(other) || ((placed[other] as number[])[from] as number) === 0) continue
        seen.add(other)
        givesUp.set(other, from)
        queue.push(other)
      }
    }
  }
  return 0
}

const move = (
  collars: readonly CoreCollar[],
  placed: number[][],
  used: number[],
  end: number,
  wanted: number,
  reachedBy: ReadonlyMap<number, number>,
  givesUp: ReadonlyMap<number, number>
): number => {
  let amount = Math.min(wanted, countOf(collars, end) - (used[end] as number))
  const steps: { readonly to: number; readonly from: number; readonly instead: number | undefined }[] = []
  let source: number | undefined = end
  while (source !== undefined) {
    const to = reachedBy.get(source) as number
    const instead = givesUp.get(to)
    if (instead !== undefined) amount = Math.min(amount, (placed[to] as number[])[instead] as number)
    steps.push({ to, from: source, instead })
    source = instead
  }
  for (const { to, from, instead } of steps) {
    const row = placed[to] as number[]
    row[from] = (row[from] as number) + amount
    if (instead !== undefined) row[instead] = (row[instead] as number) - amount
  }
  used[end] = (used[end] as number) + amount
  return amount
}
