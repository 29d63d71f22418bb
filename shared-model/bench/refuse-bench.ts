import type { BenchInput } from './bench-input'
import type { BenchProblem } from './codes'
import { sawOf } from './saw-of'

/** More clampings in one batch are a slip of the keyboard. */
const MOST_PIECES = 20_000
const MOST_S = 1e8
const LONGEST_MM = 100_000
/** A bit for each operation of one piece. */
const MOST_GROUPS = 30

type Limit = readonly [field: string, value: number, least: number, most: number]

/** The first thing the bench cannot plan with, or null. */
export const refuseBench = (input: BenchInput): BenchProblem | null => {
  for (const [field, value, least, most] of limitsOf(input)) {
    if (!Number.isFinite(value)) return { code: 'not-finite', figures: { what: field }, where: { field } }
    if (value < least || value > most) {
      return { code: 'out-of-range', figures: { what: field, value, least, most }, where: { field } }
    }
  }
  const unknown = sawIds(input).find((id) => sawOf(input, id) === undefined)
  if (unknown !== undefined) return { code: 'saw-unknown', figures: { sawId: unknown } }
  for (const collar of input.collars) {
    for (const { needId } of collar.fromCores) {
      const parent = input.collars.find((other) => other.needId === needId)
      if (!parent || parent.innerSawId === null || !isWider(input, parent.outerSawId, collar.outerSawId)) {
        return { code: 'core-unknown', figures: { needId: collar.needId, fromNeedId: needId } }
      }
    }
  }
  return null
}

const isWider = (input: BenchInput, sawId: string, thanId: string): boolean =>
  (sawOf(input, sawId)?.diameterMm ?? 0) > (sawOf(input, thanId)?.diameterMm ?? 0)

/** Every saw that is asked for, once, in the order in which they are. */
const sawIds = (input: BenchInput): readonly string[] => {
  const ids = new Set<string>()
  const add = (id: string | null): void => {
    if (id !== null) ids.add(id)
  }
  for (const { holes } of input.channels)
    for (const { sawId, alsoSawIds } of holes) {
      add(sawId)
      alsoSawIds.forEach(add)
    }
  for (const { outerSawId, innerSawId } of input.collars) [outerSawId, innerSawId].forEach(add)
  for (const { opened } of input.risers) if (opened.by === 'bore') add(opened.sawId)
  return [...ids]
}

const limitsOf = (input: BenchInput): readonly Limit[] => {
  const collars = input.collars.map(
    ({ fromSheet, fromCores }) => fromSheet + fromCores.reduce((sum, { count }) => sum + count, 0)
  )
  const all = [...collars, ...input.risers.map(({ count }) => count), input.channels.length * input.quantity]
  return [
    ['quantity', input.quantity, 0, MOST_PIECES],
    ['graduationMm', input.graduationMm, 0.01, 100],
    ['pilotMm', input.pilotMm ?? 1, 0.5, 300],
    ...Object.entries(input.times).map(([name, value]): Limit => [`times.${name}`, value, 0, MOST_S]),
    ...input.channels.flatMap(({ channelId, holes }): Limit[] => [
      [`channels.${channelId}.holes`, groupsOf(holes) * 3, 0, MOST_GROUPS],
      ...holes.filter(isOut).flatMap((hole): Limit[] => [
        [`channels.${channelId}.${hole.id}.atMm`, hole.atMm, -LONGEST_MM, LONGEST_MM],
        [`channels.${channelId}.${hole.id}.diameterMm`, hole.diameterMm, 0, LONGEST_MM]
      ])
    ]),
    ...input.pieces
      .filter(({ lengthMm }) => !(lengthMm >= 0 && lengthMm <= LONGEST_MM))
      .map(({ id, lengthMm }): Limit => [`pieces.${id}.lengthMm`, lengthMm, 0, LONGEST_MM]),
    [
      'collars',
      new Set(input.collars.map(({ outerSawId, innerSawId }) => `${outerSawId} ${innerSawId}`)).size * 3,
      0,
      MOST_GROUPS
    ],
    ['collarSheets', input.collarSheets, 0, MOST_PIECES],
    ['pieces in the batch', all.reduce((sum, count) => sum + count, 0), 0, MOST_PIECES],
    ...all.map((count): Limit => ['count', count, 0, MOST_PIECES])
  ]
}

/** Only holes (and pieces) with something to be said about are named: a batch has hundreds. */
const isOut = ({ atMm, diameterMm }: BenchInput['channels'][number]['holes'][number]): boolean =>
  !(Math.abs(atMm) <= LONGEST_MM && diameterMm >= 0 && diameterMm <= LONGEST_MM)

/** Kinds of holes: by their saws, or by the drill's diameter. */
const groupsOf = (holes: BenchInput['channels'][number]['holes']): number => {
  const groups = new Set<string | number>()
  for (const { sawId, alsoSawIds, diameterMm } of holes)
    groups.add(sawId === null ? diameterMm : alsoSawIds.length === 0 ? sawId : [sawId, ...alsoSawIds].join(' '))
  return groups.size
}
