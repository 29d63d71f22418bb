import type { Crop } from '../crops'
import { failed, ok, type Result } from '../outcome'
import type { Litres } from '../units'
import type { FirstFill } from './channel-water'
import { checkWaterPlan, within } from './check-water-plan'
import type { ReservoirFinding, ReservoirProblem } from './codes'
import { concentrateDose } from './concentrate'
import { oxideToElement } from './nutrients'
import type { Salt, WaterPlan } from './stage'

/**
 * What goes into the first fill of all channels: litres, the conductivity that suits every crop, concentrate by dilution, or
 * dry salts with ppm of each element, in the order of dissolving. Salts give ppm only: conductivity is then read with a
 * meter. Where the source water's conductivity is not known no concentrate is worked out, and a finding asks for it.
 */
export function firstFill(
  total: Litres,
  crops: readonly Crop[],
  water: WaterPlan
): Result<{ readonly fill: FirstFill; readonly findings: readonly ReservoirFinding[] }, ReservoirProblem> {
  const wrong = checkWaterPlan(water) ?? within('volume', total, 0, 1e6)
  if (wrong) return failed(wrong)
  const { ec, conflicts } = ecForAll(crops)
  const findings: ReservoirFinding[] = conflicts.map((text) => ({
    code: 'crops-disagree-on-ec',
    severity: 'warn',
    figures: { crops: text },
    where: { field: 'crops' },
    source: 'ec-table'
  }))
  const base: FirstFill = {
    litres: total,
    ec,
    ecConflicts: [...conflicts, ...crops.flatMap((crop) => crop.conflicts.filter((text) => text.startsWith('EC ')))],
    concentrateMl: null,
    expectedEcMsPerCm: null,
    salts: [],
    ppm: {}
  }
  const { feed } = water
  if (feed.kind === 'none') return ok({ fill: base, findings })
  if (feed.kind === 'salts') return saltFill(base, feed.salts, findings)
  if (water.sourceEcMsPerCm === null) {
    findings.push({
      code: 'source-ec-missing',
      severity: 'note',
      figures: { name: feed.name },
      where: { field: 'water.sourceEcMsPerCm' }
    })
    return ok({ fill: base, findings })
  }
  const dose = concentrateDose({ ...feed, waterEcMsPerCm: water.sourceEcMsPerCm, litres: total })
  if (!dose.ok) return dose
  const ecMsPerCm = dose.value.ecMsPerCm
  if (ec && (ecMsPerCm < ec.least - 1e-9 || ecMsPerCm > ec.most + 1e-9)) {
    findings.push({
      code: 'ec-outside-crop',
      severity: 'note',
      figures: { ecMsPerCm, least: ec.least, most: ec.most },
      where: { field: 'water.feed.targetEcMsPerCm' },
      source: 'ec-table',
      ...toRange(ecMsPerCm < ec.least ? ec.least : ec.most, {
        ...feed,
        waterEcMsPerCm: water.sourceEcMsPerCm,
        litres: total
      })
    })
  }
  return ok({ fill: { ...base, concentrateMl: dose.value.ml, expectedEcMsPerCm: ecMsPerCm }, findings })
}

/** Aiming at the nearer end of the range clears it, where the label's dose reaches so far. */
function toRange(
  targetEcMsPerCm: number,
  dose: Parameters<typeof concentrateDose>[0]
): { readonly fix?: { readonly field: string; readonly value: number } } {
  return concentrateDose({ ...dose, targetEcMsPerCm }).ok
    ? { fix: { field: 'water.feed.targetEcMsPerCm', value: targetEcMsPerCm } }
    : {}
}

/** The range that every crop's own range has in common; where two have none, they are named with their figures. */
function ecForAll(crops: readonly Crop[]): { readonly ec: FirstFill['ec']; readonly conflicts: readonly string[] } {
  const ranged = crops.filter((crop) => crop.ecMsPerCm !== null)
  if (ranged.length === 0) return { ec: null, conflicts: [] }
  let high = ranged[0]
  let low = ranged[0]
  for (const crop of ranged) {
    if ((crop.ecMsPerCm?.least ?? 0) > (high?.ecMsPerCm?.least ?? 0)) high = crop
    if ((crop.ecMsPerCm?.most ?? 0) < (low?.ecMsPerCm?.most ?? 0)) low = crop
  }
  const least = high?.ecMsPerCm?.least ?? 0
  const most = low?.ecMsPerCm?.most ?? 0
  if (least <= most || !high || !low) return { ec: { least, most }, conflicts: [] }
  return { ec: null, conflicts: [`${spanText(low)}; ${spanText(high)}`] }
}

const spanText = (crop: Crop): string => `${crop.name} ${crop.ecMsPerCm?.least ?? 0}–${crop.ecMsPerCm?.most ?? 0}`

function saltFill(
  base: FirstFill,
  salts: readonly Salt[],
  findings: readonly ReservoirFinding[]
): Result<{ readonly fill: FirstFill; readonly findings: readonly ReservoirFinding[] }, ReservoirProblem> {
  const ppm: Record<string, number> = {}
  for (const salt of salts) {
    for (const [label, percent] of Object.entries(salt.percent)) {
      const oxide =
        label === 'P2O5' || label === 'K2O' ? oxideToElement(label, percent) : ok({ element: label, percent })
      if (!oxide.ok) return oxide
      const { element } = oxide.value
      ppm[element] = (ppm[element] ?? 0) + salt.gPerL * 10 * oxide.value.percent
    }
  }
  const order = inOrder(salts).map((salt) => ({ name: salt.name, grams: salt.gPerL * base.litres }))
  return ok({ fill: { ...base, salts: order, ppm }, findings })
}

/** Sulphates and phosphates first, calcium last into the full volume, so that they do not fall out. Common practice, no source. */
function inOrder(salts: readonly Salt[]): readonly Salt[] {
  const calcium = (salt: Salt): number => ((salt.percent.Ca ?? 0) > 0 ? 1 : 0)
  return salts
    .map((salt, i) => ({ salt, i }))
    .sort((a, b) => calcium(a.salt) - calcium(b.salt) || a.i - b.i)
    .map(({ salt }) => salt)
}
