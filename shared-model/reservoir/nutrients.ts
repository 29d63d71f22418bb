/**
 * Nutrient arithmetic: 1 ppm is 1 mg/L. What a salt at a dose brings of each element, the salt for a target, oxides on a
 * label as elements, ppm from millimoles, and what a meter's ppm scale makes of a conductivity.
 *
 * mg/L of salt = target ppm ÷ element's share by mass. ppm of an element = mmol/L × its atoms × its atomic weight.
 * P = P₂O₅ × 2 P ÷ (2 P + 5 O), K = K₂O × 2 K ÷ (2 K + O), by the abridged atomic weights. Shares 0 to 1, percent 0 to 100.
 * @source salt-arithmetic
 * @source hoagland-solution
 */
import { failed, ok, type Result } from '../outcome'
import type { Litres } from '../units'
import { ATOMIC_WEIGHTS } from './atomic-weights'
import { within } from './check-water-plan'
import type { ReservoirProblem } from './codes'
import { atomsOf } from './formula'
import { EC_MOST } from './limits'

/** Salt that brings an element to a target, what else it brings, and grams for a volume. */
export function saltForTarget(wanted: {
  readonly targetPpm: number
  readonly elementShare: number
  readonly otherShares: Readonly<Record<string, number>>
  readonly litres: Litres
}): Result<
  { readonly saltMgPerL: number; readonly otherPpm: Readonly<Record<string, number>>; readonly saltG: number },
  ReservoirProblem
> {
  const wrong =
    within('target', wanted.targetPpm, 0, 10_000) ??
    within('share of the element', wanted.elementShare, 1e-6, 1) ??
    within('volume', wanted.litres, 0, 1e6) ??
    Object.entries(wanted.otherShares)
      .map(([name, share]) => within(`share of ${name}`, share, 0, 1))
      .find((problem) => problem !== undefined)
  if (wrong) return failed(wrong)
  const saltMgPerL = wanted.targetPpm / wanted.elementShare
  const otherPpm = Object.fromEntries(
    Object.entries(wanted.otherShares).map(([name, share]) => [name, saltMgPerL * share])
  )
  return ok({ saltMgPerL, otherPpm, saltG: (saltMgPerL * wanted.litres) / 1000 })
}

/** Percent of the element in a percent of its oxide as labels print it: P₂O₅, K₂O, and also CaO, MgO, SO₃. */
export function oxideToElement(
  oxide: string,
  percent: number
): Result<{ readonly element: string; readonly percent: number }, ReservoirProblem> {
  const wrong = within('percent of oxide', percent, 0, 100)
  if (wrong) return failed(wrong)
  const atoms = atomsOf(oxide)
  if (!atoms.ok || !atoms.value.O) return failed({ code: 'unknown-oxide', figures: { oxide } })
  const [element, ...more] = Object.keys(atoms.value).filter((name) => name !== 'O')
  if (element === undefined || more.length > 0) return failed({ code: 'unknown-oxide', figures: { oxide } })
  const share = (weight(element) * (atoms.value[element] ?? 0)) / molarMass(atoms.value)
  return ok({ element, percent: percent * share })
}

/** ppm of each nutrient from millimoles of each salt to the litre; hydrogen, oxygen and carbon are left out. */
export function solutionPpm(
  mmolPerL: Readonly<Record<string, number>>
): Result<Readonly<Record<string, number>>, ReservoirProblem> {
  const ppm: Record<string, number> = {}
  for (const [formula, mmol] of Object.entries(mmolPerL)) {
    const wrong = within(formula, mmol, 0, 1000)
    if (wrong) return failed(wrong)
    const atoms = atomsOf(formula)
    if (!atoms.ok) return atoms
    for (const [element, count] of Object.entries(atoms.value)) {
      if (element === 'H' || element === 'O' || element === 'C') continue
      ppm[element] = (ppm[element] ?? 0) + mmol * count * weight(element)
    }
  }
  return ok(ppm)
}

/** What a meter shows in ppm on a scale (500, 640 or 700 ppm to the mS/cm). Valid: 0 to 20 mS/cm, scale 1 to 1000. @source conductivity-scales */
export function conductivityPpm(msPerCm: number, ppmPerMsPerCm: number): Result<number, ReservoirProblem> {
  const wrong = within('conductivity', msPerCm, 0, EC_MOST) ?? within('ppm scale', ppmPerMsPerCm, 1, 1000)
  return wrong ? failed(wrong) : ok(msPerCm * ppmPerMsPerCm)
}

const weight = (element: string): number => ATOMIC_WEIGHTS[element] ?? 0

const molarMass = (atoms: Readonly<Record<string, number>>): number =>
  Object.entries(atoms).reduce((sum, [element, count]) => sum + weight(element) * count, 0)
