import type { EndClosure } from '../parts'
import type { PartIndex } from '../seating'
import { closureHolds } from './closure-holds'
import type { LayoutFinding } from './codes'
import type { LaidOut } from './laid-out'

/**
 * Whether both end closures hold: on this material, on this size with its tolerance, by their joint method. A wrong one is a
 * stop that names those on hand that fit, and the change where only one does.
 * @source closure-fit
 */
export function closureFindings(
  { channel, layout }: LaidOut,
  index: PartIndex,
  onHand: readonly EndClosure[]
): readonly LayoutFinding[] {
  const profile = index.profiles.get(channel.profileId)
  if (!profile) return []
  const found: LayoutFinding[] = []
  const ends = [
    { id: channel.datumClosureId, field: `channels.${channel.id}.datumClosureId` },
    { id: channel.farClosureId, field: `channels.${channel.id}.farClosureId` }
  ]
  for (const { id, field } of ends) {
    const closure = index.closures.get(id)
    if (!closure) continue
    const verdict = closureHolds(closure, profile)
    if (verdict === 'holds') continue
    const candidates = [...index.closures.values(), ...onHand.filter((c) => !index.closures.has(c.id))]
    const fitting = candidates.filter((c) => closureHolds(c, profile) === 'holds')
    const fits = fitting.map((c) => c.name).join(', ')
    const [only] = fitting
    const fix = only && fitting.length === 1 ? { fix: { field, value: only.id } } : {}
    const where = { channelId: channel.id, partId: id, field }
    const base = { severity: 'stop', where, source: 'closure-fit', ...fix } as const
    if (verdict === 'other-size') {
      found.push({
        code: 'closure-wrong-size',
        ...base,
        figures: {
          closure: closure.name,
          sizeMm: sizeText(closure.holdsOn.widthMm, closure.holdsOn.heightMm),
          profileMm: sizeText(layout.section.widthMm, layout.section.heightMm),
          toleranceMm: closure.holdsOn.toleranceMm,
          fits
        }
      })
    } else if (verdict === 'other-material') {
      found.push({
        code: 'closure-wrong-material',
        ...base,
        figures: { closure: closure.name, material: profile.material, fits }
      })
    } else {
      found.push({
        code: 'joint-does-not-hold',
        ...base,
        figures: { closure: closure.name, joint: closure.joint, material: profile.material, fits }
      })
    }
  }
  return found
}

function sizeText(widthMm: number | null, heightMm: number | null): string {
  const text = (value: number | null): string => (value === null ? 'any' : String(Math.round(value * 10) / 10))
  return `${text(widthMm)} × ${text(heightMm)}`
}
