import type { Budget } from '../outcome'
import type { CentreField, Point } from './centre-field'
import { FIELD_TOLERANCE_MM } from './centre-field'
import type { Crowding } from './crowding'
import { crowding } from './crowding'
import { latticeCandidates } from './lattice'
import type { Relaxer } from './relax'
import { relaxer } from './relax'
import type { Seeded } from './seeded'
import { seeded } from './seeded'

export interface Found {
  readonly centres: readonly Point[] | null
  /** Work spent, in thousands of pair distances. */
  readonly work: number
}

/** One unit of work is this many pair distances: some microseconds. */
const PAIRS_PER_WORK = 1000

/**
 * Looks for `count` centres in the field by basin hopping: relax a start, then again and again take the most crowded
 * circle out, set it into the roomiest gap (or shake a few), relax, keep what is less crowded. Starts are row lattices
 * with a circle too many or too few and random scatters. The same field, count and work give the same answer.
 */
export const freeSearch = (field: CentreField, count: number, budget: Budget): Found => {
  const { acrossMm, upMm, apartMm } = field
  const crowd = crowding(count, acrossMm, upMm, apartMm)
  const engine = relaxer(count, crowd)
  const random = seeded(count * 2_654_435_761)
  const starts = latticeCandidates(field, Math.max(3, count >> 3))
  const spent = () => crowd.looked() / PAIRS_PER_WORK
  const out = () => spent() >= budget.work || budget.stop()
  const at = new Float64Array(2 * count)
  const best = new Float64Array(2 * count)
  const strain = new Float64Array(count)
  for (let round = 0; !out(); round++) {
    const lattice = round % 2 === 0 ? starts[(round >> 1) % Math.max(1, starts.length)] : undefined
    scatter(at, count, field, lattice, random)
    let value = engine.relax(at, LONG, GOOD)
    best.set(at)
    let failures = 0
    let settled = false
    while (failures < PATIENCE && !out()) {
      if (value < CLOSE && !settled) {
        if (settles(engine, at, best, field)) return { centres: pointsOf(at, count), work: spent() }
        settled = true
      }
      at.set(best)
      move(at, count, field, crowd, strain, random, failures)
      const reached = engine.relax(at, SHORT, GOOD)
      if (reached < value * 0.999999) {
        failures = 0
        settled = false
        value = reached
        best.set(at)
      } else {
        failures += 1
      }
    }
  }
  return { centres: null, work: spent() }
}

const LONG = 400
const SHORT = 200
const PATIENCE = 60
/** mm²: energy at which a layout is good beyond the field tolerance. */
const GOOD = FIELD_TOLERANCE_MM * FIELD_TOLERANCE_MM * 0.01
/** mm²: energy at which a longer relaxation is worth its time. */
const CLOSE = 1e-3

/** Relaxes `best` to the end; true when every distance is kept within the tolerance. */
const settles = (engine: Relaxer, at: Float64Array, best: Float64Array, field: CentreField): boolean => {
  at.set(best)
  engine.relax(at, 3000, GOOD)
  clampInto(at, field)
  return leastDistance(at) >= field.apartMm - FIELD_TOLERANCE_MM
}

const clampInto = (at: Float64Array, field: CentreField): void => {
  const count = at.length / 2
  for (let i = 0; i < count; i++) {
    at[i] = Math.min(field.acrossMm, Math.max(0, at[i] as number))
    at[count + i] = Math.min(field.upMm, Math.max(0, at[count + i] as number))
  }
}

const leastDistance = (at: Float64Array): number => {
  const count = at.length / 2
  let least = Number.POSITIVE_INFINITY
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const dx = (at[i] as number) - (at[j] as number)
      const dy = (at[count + i] as number) - (at[count + j] as number)
      least = Math.min(least, dx * dx + dy * dy)
    }
  }
  return Math.sqrt(least)
}

const pointsOf = (at: Float64Array, count: number): Point[] =>
  Array.from({ length: count }, (_, i) => [at[i] as number, at[count + i] as number] as const)

const scatter = (
  at: Float64Array,
  count: number,
  field: CentreField,
  lattice: readonly Point[] | undefined,
  random: Seeded
): void => {
  const kept = lattice ? [...lattice] : []
  while (kept.length > count) kept.splice(random.whole(kept.length), 1)
  const shake = lattice ? 0.05 * field.apartMm : 0
  for (let i = 0; i < count; i++) {
    const from = kept[i]
    at[i] = from ? from[0] + shake * (random.share() - 0.5) : random.share() * field.acrossMm
    at[count + i] = from ? from[1] + shake * (random.share() - 0.5) : random.share() * field.upMm
  }
}

/** One hop: mostly a crowded circle into a gap, sometimes a shake of all. */
const move = (
  at: Float64Array,
  count: number,
  field: CentreField,
  crowd: Crowding,
  strain: Float64Array,
  random: Seeded,
  failures: number
): void => {
  if (failures % 4 === 3) {
    const size = field.apartMm * (0.1 + 0.5 * random.share())
    for (let k = 0; k < at.length; k++) at[k] = (at[k] as number) + size * (random.share() - 0.5)
    return
  }
  crowd.shares(at, strain)
  const moved = failures < 2 && failures % 2 === 0 ? mostOf(strain) : tournament(strain, random)
  const [x, y] = roomiest(at, count, moved, field, random)
  at[moved] = x
  at[count + moved] = y
}

const mostOf = (strain: Float64Array): number => {
  let most = 0
  for (let i = 1; i < strain.length; i++) if ((strain[i] as number) > (strain[most] as number)) most = i
  return most
}

const tournament = (strain: Float64Array, random: Seeded): number => {
  let chosen = random.whole(strain.length)
  for (let k = 0; k < 2; k++) {
    const other = random.whole(strain.length)
    if ((strain[other] as number) > (strain[chosen] as number)) chosen = other
  }
  return chosen
}

/** Of some random places the one whose nearest other centre is farthest. */
const roomiest = (at: Float64Array, count: number, without: number, field: CentreField, random: Seeded): Point => {
  let best: Point = [random.share() * field.acrossMm, random.share() * field.upMm]
  let room = -1
  for (let k = 0; k < 24; k++) {
    const x = random.share() * field.acrossMm
    const y = random.share() * field.upMm
    let nearest = Number.POSITIVE_INFINITY
    for (let i = 0; i < count; i++) {
      if (i === without) continue
      const dx = x - (at[i] as number)
      const dy = y - (at[count + i] as number)
      nearest = Math.min(nearest, dx * dx + dy * dy)
    }
    if (nearest > room) {
      room = nearest
      best = [x, y]
    }
  }
  return best
}
