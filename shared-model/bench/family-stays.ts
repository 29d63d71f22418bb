import type { ToolNeeds } from './tool-needs'
import { bits } from './tool-needs'

type Change = readonly [from: number, to: number]

/** A kind of piece with an order of its own on a walk. */
export interface InTurn {
  /** Its fewest stages. */
  readonly visits: number
  /** By change: it can stay over it in so few stages. */
  readonly isOfUse: (change: number) => boolean
}

/** At how many changes of a walk that goes once through each set of a family no clamping can be saved. */
export interface FamilyStays {
  /** No piece that stays clamped from one set to the next saves a clamping by that alone. */
  readonly lacks: (from: number, to: number) => boolean
  /** The least that is lost by the changes that lack, wherever else the walk goes. */
  readonly lost: (lacking: readonly Change[]) => number
  /** The least that is lost on a whole walk, given how the kinds of pieces with an order of their own come on it. */
  readonly lostOn: (walk: readonly number[], inTurn: readonly InTurn[]) => number
}

/**
 * Answers: at which changes can a piece stay clamped to any use?
 *
 * cover(m): the fewest sets of the family, or single tools, that cover the tools m of a piece. A piece clamped h times
 * and staying over c changes is covered by h + c sets, so it saves cover(m) − h ≤ c. It saves c only if each change is of
 * use to it: from S to S' if cover(m without S and S') = cover(m) − 2; and no more than `stays` of them, the greatest c
 * with (tools of m − c) / size ≤ cover(m) − c. Otherwise it loses one of them at the least. So what a walk loses is what
 * no dealing out of its changes to pieces leaves unserved, less what those recover that lose one of several:
 * - A piece that stays over two changes in a row keeps the set between to itself; all others do without that set. What
 *   that takes is `apart`: visits(family without it) − visits(family), and one more unless some piece saves both there.
 * - Else it is clamped as often as it stays, h ≥ c, and saves cover(m) − h. With cover(m) of 3 or 4 it may stay over two
 *   changes that are of no use and save one, if cover(m without their four sets) ≤ cover(m) − 3; with cover(m) < 3 it
 *   cannot. With more it is left at one lost in all.
 * A piece with an order of its own can stay over a change only where it has work before and after; of the changes that
 * are of no use to it in its fewest stages it may recover one of two where these are three or more.
 */
export const familyStays = (needs: ToolNeeds, family: readonly number[]): FamilyStays => {
  const { masks, setMasks, free, ordered } = needs
  const cover = coverOf(setMasks, family, masks)
  const apart = leastApart(needs, family, cover)
  const most = free.reduce((so, { mask }) => Math.max(so, cover[mask] as number), 0)
  const joined = ([from, to]: Change) => (setMasks[from] as number) | (setMasks[to] as number)
  const isShared = (one: Change, other: Change) => {
    const both = joined(one) | joined(other)
    return free.some(({ mask }) => (cover[mask & ~both] as number) <= (cover[mask] as number) - 3)
  }
  const size = bits(setMasks[0] ?? 1)
  const plain = free.flatMap(({ mask, count }) => {
    const stays = staysOf(bits(mask), cover[mask] as number, size)
    const isOfUse = (change: Change) => cover[mask & ~joined(change)] === (cover[mask] as number) - 2
    return stays > 0 ? [{ most: count * stays, isOfUse }] : []
  })
  const again = againOf(needs, family)
  const lostOf = (
    unserved: number,
    changes: readonly Change[],
    isSharedInTurn: (one: number, other: number) => boolean
  ) => {
    if (unserved === 0) return 0
    if (most > 4) return Math.min(1, apart)
    const shared = changes.filter((one, i) =>
      changes.some((other, j) => i !== j && (isShared(one, other) || isSharedInTurn(i, j)))
    )
    return Math.min(Math.max(1, unserved - (shared.length >> 1)), apart)
  }
  return {
    lacks: (from, to) =>
      !plain.some(({ isOfUse }) => isOfUse([from, to])) && !again.some((kind) => kind.carries(from, to)),
    lost: (lacking) => lostOf(lacking.length, lacking, () => false),
    lostOn: (walk, inTurn) => {
      const changes = walk.slice(1).map((to, i): Change => [walk[i] as number, to])
      const isCarried = changes.map(([from, to]) => ordered.map((kind) => kind.carries(from, to)))
      const holders = [
        ...plain.map(({ most: many, isOfUse }) => ({
          most: many,
          isOfUse: (i: number) => isOfUse(changes[i] as Change)
        })),
        ...ordered.map((kind, k) => ({
          most: kind.count * ((inTurn[k]?.visits ?? 1) - 1),
          isOfUse: (i: number) => isCarried[i]?.[k] === true && inTurn[k]?.isOfUse(i) === true
        }))
      ]
      if (inTurn.some(({ visits }) => visits > 4)) return 0
      const isSharedInTurn = (one: number, other: number) =>
        inTurn.some(({ visits }, k) => visits > 2 && isCarried[one]?.[k] === true && isCarried[other]?.[k] === true)
      return lostOf(changes.length - dealtOut(changes.length, holders), changes, isSharedInTurn)
    }
  }
}

/** Kinds of pieces with an order of their own that come more than once to the sets of a family. */
const againOf = ({ ordered }: ToolNeeds, family: readonly number[]) =>
  ordered.filter((kind) => kind.visits(family.reduce((all, set) => all | (kind.bitOf[set] as number), 0)) > 1)

/** What it takes that one set of a family is left to one piece alone. */
const leastApart = (needs: ToolNeeds, family: readonly number[], cover: Uint8Array): number => {
  const { masks, setMasks, free } = needs
  const isAgain = againOf(needs, family).length > 0
  const visits = (covers: Uint8Array) =>
    free.reduce((sum, { mask, count }) => sum + count * (covers[mask] as number), 0)
  const all = visits(cover)
  return family.reduce((least, set) => {
    const others = family.filter((other) => other !== set)
    const left = coverOf(setMasks, others, masks)
    const more = visits(left) - all
    if (more >= least) return least
    const own = setMasks[set] as number
    const isNext = (mask: number) => bits(mask & own) === bits(own) - 1
    const ends = others.map((other) => setMasks[other] as number).filter(isNext)
    const savesBoth =
      isAgain ||
      ends.some((before) =>
        ends.some(
          (after) =>
            before !== after &&
            free.some(({ mask }) => (left[mask & ~(before | own | after)] as number) <= (left[mask] as number) - 3)
        )
      )
    return Math.min(least, savesBoth ? more : more + 1)
  }, Number.POSITIVE_INFINITY)
}

/** Over how many changes a piece can stay that each save it a clamping. */
const staysOf = (tools: number, cover: number, size: number): number => {
  let stays = 0
  while (cover - stays > 1 && Math.ceil((tools - stays - 1) / size) <= cover - stays - 1) stays += 1
  return stays
}

/** To how many changes a piece can be dealt that they are of use to: a greatest matching by paths that free a piece. */
const dealtOut = (
  changes: number,
  holders: readonly { readonly most: number; readonly isOfUse: (change: number) => boolean }[]
): number => {
  const given: number[][] = holders.map(() => [])
  const place = (change: number, tried: Set<number>): boolean => {
    for (const [h, { most, isOfUse }] of holders.entries()) {
      if (tried.has(h) || !isOfUse(change)) continue
      tried.add(h)
      const mine = given[h] as number[]
      if (mine.length < most) {
        mine.push(change)
        return true
      }
      for (const [i, other] of mine.entries()) {
        if (!place(other, tried)) continue
        mine[i] = change
        return true
      }
    }
    return false
  }
  let served = 0
  for (let change = 0; change < changes; change++) if (place(change, new Set())) served += 1
  return served
}

/** By tools: the fewest sets of a family, or single tools, that cover them. */
const coverOf = (setMasks: readonly number[], family: readonly number[], masks: number): Uint8Array => {
  const cover = Uint8Array.from({ length: masks }, (_, mask) => bits(mask))
  for (const set of family) {
    const own = setMasks[set] as number
    for (let mask = masks - 1; mask > 0; mask--) {
      const after = 1 + (cover[mask & ~own] as number)
      if (after < (cover[mask] as number)) cover[mask] = after
    }
  }
  return cover
}
