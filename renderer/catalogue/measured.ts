import { type Edited, nextId, type PartsUsed, parseDesign, parseWorkshop } from '../../shared-model/design'
import { failed, ok } from '../../shared-model/outcome'
import type { EvidenceByField } from '../../shared-model/sources'
import type { Pair } from '../store/history'
import type { FigureShelf } from './figures'

interface PartLike {
  readonly id: string
  readonly name: string
  readonly evidence: EvidenceByField
}

/** A caliper reading: the part's figures by field, and the day it was taken. */
export interface Reading {
  readonly shelf: FigureShelf
  readonly id: string
  readonly figures: Readonly<Record<string, number>>
  /** ISO date. */
  readonly on: string
}

/**
 * Writes a reading over the design's own copy of a part, graded as measured on that day, and keeps the part in the workshop for
 * later designs. A cup is the same thing whether it holds a plant or is cut to a riser, so both copies change.
 */
export const measurePart = (pair: Pair, reading: Reading): Edited<Pair> =>
  overwrite(pair, reading.shelf, reading.id, (part) => withReading(part, reading))

export const renamePart = (pair: Pair, shelf: FigureShelf, id: string, name: string): Edited<Pair> =>
  overwrite(pair, shelf, id, (part) => ({ ...part, name }))

/** Puts a copy of a part under a new id and name on the design's and the workshop's shelf, to be measured. */
export function addPartFrom<S extends FigureShelf>(
  pair: Pair,
  shelf: S,
  part: PartsUsed[S][number],
  name: string
): Edited<Pair> {
  const taken: readonly PartLike[] = [...pair.design.parts[shelf], ...workshopShelf(pair, shelf)]
  const made: PartLike = { ...part, id: nextId('own-', taken), name }
  const list: readonly PartLike[] = pair.design.parts[shelf]
  const design = { ...pair.design, parts: { ...pair.design.parts, [shelf]: [...list, made] } }
  return checked(inWorkshop({ ...pair, design }, shelf, made))
}

const withReading = <T extends PartLike>(part: T, { figures, on }: Reading): T => {
  const evidence = Object.fromEntries(
    Object.keys(figures).map((field) => [field, { grade: 'measured', source: 'user', on } as const])
  )
  return { ...part, ...figures, evidence: { ...part.evidence, ...evidence } }
}

function overwrite(
  pair: Pair,
  shelf: FigureShelf,
  id: string,
  change: <T extends PartLike>(part: T) => T
): Edited<Pair> {
  const { parts } = pair.design
  const list: readonly PartLike[] = parts[shelf]
  const risers =
    shelf === 'cups'
      ? parts.risers.map((riser) => (riser.cup.id === id ? { ...riser, cup: change(riser.cup) } : riser))
      : parts.risers
  const now = list.find((each) => each.id === id) ?? (shelf === 'cups' ? riserCup(pair, id) : undefined)
  if (now === undefined) return failed({ code: 'edit-not-found', figures: { what: 'part', id } })
  const shelved = list.map((each) => (each.id === id ? change(each) : each))
  const design = { ...pair.design, parts: { ...parts, risers, [shelf]: shelved } }
  return checked(inWorkshop({ ...pair, design }, shelf, change(now)))
}

const riserCup = (pair: Pair, id: string): PartLike | undefined =>
  pair.design.parts.risers.map((riser) => riser.cup).find((cup) => cup.id === id)

const workshopShelf = ({ workshop }: Pair, shelf: FigureShelf): readonly PartLike[] =>
  shelf === 'saws' ? workshop.saws.map((each) => each.saw) : shelf === 'collars' ? [] : workshop.parts[shelf]

/** Saws stand among the workshop's own only when they are owned; collars are made, not kept. */
function inWorkshop(pair: Pair, shelf: FigureShelf, part: PartLike): Pair {
  const { workshop } = pair
  if (shelf === 'collars') return pair
  if (shelf === 'saws') {
    const saws = workshop.saws.map((each) =>
      each.saw.id === part.id ? { ...each, saw: { ...each.saw, ...part } } : each
    )
    return { ...pair, workshop: { ...workshop, saws } }
  }
  const list: readonly PartLike[] = workshop.parts[shelf]
  const kept = list.some((each) => each.id === part.id)
    ? list.map((each) => (each.id === part.id ? part : each))
    : [...list, part]
  return { ...pair, workshop: { ...workshop, parts: { ...workshop.parts, [shelf]: kept } } }
}

/** Through the bounds of both documents; what lies outside them changes nothing. */
function checked(pair: Pair): Edited<Pair> {
  const design = parseDesign(pair.design)
  const problem = design.ok ? undefined : design.problem[0]
  if (problem !== undefined) return failed(problem)
  const workshop = parseWorkshop(pair.workshop)
  const other = workshop.ok ? undefined : workshop.problem[0]
  return other === undefined ? ok(pair) : failed(other)
}
