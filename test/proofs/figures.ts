import { type AtBench, NOTHING_AT_BENCH } from '../../shared-model/cutting'
import type { Plan } from '../../shared-model/plan'

/** Fields of a plan that measure a thing: a place or a gap may lie below its zero, these may not. */
const NEVER_NEGATIVE =
  /^(lengthMm|leftoverMm|trimMm|kerfMm|diameterMm|widthMm|depthMm|heightMm|litres|massG)$|(LengthMm|Litres|MassG)$/

/** Path of the first figure that is not finite, or negative where a thing is measured; null where there is none. */
export function wrongFigure(value: unknown, key = ''): string | null {
  if (typeof value === 'number') {
    const wrong = !Number.isFinite(value) || (value < 0 && NEVER_NEGATIVE.test(key))
    return wrong ? ` = ${value}` : null
  }
  if (typeof value !== 'object' || value === null) return null
  for (const name of Object.keys(value)) {
    const wrong = wrongFigure(Reflect.get(value, name), name)
    if (wrong !== null) return `.${name}${wrong}`
  }
  return null
}

/** Path of the first figure that is not finite, whatever its sign; null where there is none. */
export function notFinite(value: unknown): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : ` = ${value}`
  if (typeof value !== 'object' || value === null) return null
  for (const name of Object.keys(value)) {
    const wrong = notFinite(Reflect.get(value, name))
    if (wrong !== null) return `.${name}${wrong}`
  }
  return null
}

/** What was asked of a finding or problem may be negative, and is quoted as it was: only NaN and Infinity are wrong in it. */
export function wrongInPlan({ findings, problems, ...plan }: Plan): string | null {
  return wrongFigure(plan) ?? notFinite({ findings, problems })
}

/** Bars whose pieces, kerfs, trims and rest are more than the bar, or less by more than its kerfs, to the nanometre. */
export const barsThatDoNotAddUp = (plan: Plan): readonly string[] =>
  plan.cuts.flatMap((cut) =>
    cut.bars.flatMap((bar) => {
      const piecesMm = bar.pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
      const kerfsMm = bar.lengthMm - bar.trimMm - piecesMm - bar.leftoverMm
      return kerfsMm > -1e-5 && kerfsMm < bar.cuts * cut.kerfMm + 1e-5 ? [] : [`${bar.key}: ${kerfsMm} mm of kerf`]
    })
  )

/** Pieces that are cut not once, nor said to be uncut; a piece that was joined is cut in parts of other names. */
export const piecesNotCutOnce = (plan: Plan, bench: AtBench = NOTHING_AT_BENCH): readonly string[] => {
  if (plan.findings.some(({ code }) => code === 'piece-joined')) return []
  const profiles = new Map(plan.pieces.map(({ id, profileId }) => [id, profileId]))
  // What was cut of a piece that the design has no more, or has in another profile, stays on its bar; a spoiled one is cut again.
  const before = new Set(bench.bars.flatMap(({ pieces }) => pieces.map(({ pieceId }) => pieceId)))
  const cut = plan.cuts.flatMap(({ profileId, bars }) =>
    bars
      .flatMap(({ pieces }) => pieces)
      .filter(({ state }) => state !== 'spoiled')
      .map(({ pieceId }) => pieceId)
      .filter((id) => profiles.get(id) === profileId || !before.has(id))
  )
  const uncut = plan.cuts.flatMap((each) => each.uncut.map(({ pieceId }) => pieceId))
  const told = [...cut, ...uncut].sort()
  const wanted = plan.pieces.map(({ id }) => id).sort()
  return told.join() === wanted.join() ? [] : [`wanted ${wanted.join()}, told ${told.join()}`]
}
