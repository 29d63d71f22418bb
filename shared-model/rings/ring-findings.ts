import type { RingsFinding } from './codes'
import type { RingPlan } from './ring-plan'
import type { RingsInput } from './rings-input'

/** What the sheet plan has to say: parts without a sheet, parts larger than any sheet, and costs not proven least. */
export const ringFindings = (input: RingsInput, plan: RingPlan): readonly RingsFinding[] => {
  const short = plan.uncut.map(({ needId, count }) => shortOf(input, needId, count))
  if (plan.proven || plan.uncut.length > 0) return short
  return [
    ...short,
    {
      code: 'sheets-not-proven',
      severity: 'note',
      figures: { value: plan.value, lowerBound: plan.lowerBound },
      where: { field: 'sheets' }
    }
  ]
}

const shortOf = (input: RingsInput, needId: string, missing: number): RingsFinding => {
  const round = input.needs.find(({ id }) => id === needId)
  const plate = input.plates.find(({ id }) => id === needId)
  const { name, material, thicknessMm } = round ?? plate ?? { name: needId, material: 'unknown', thicknessMm: 0 }
  const needsMm =
    (round ? round.cutDiameterMm : Math.min(plate?.widthMm ?? 0, plate?.heightMm ?? 0)) + 2 * input.setup.edgeMm
  const sheets = input.sheets.filter(
    (sheet) => sheet.material === material && Math.abs(sheet.thicknessMm - thicknessMm) < 0.01
  )
  const largestMm = sheets.reduce((most, sheet) => Math.max(most, Math.min(sheet.widthMm, sheet.heightMm)), 0)
  const where = { partId: needId, field: 'sheets' }
  return sheets.length > 0 && largestMm < needsMm
    ? { code: 'sheet-too-small', severity: 'stop', figures: { name, needsMm, largestMm }, where }
    : { code: 'sheet-short', severity: 'stop', figures: { name, material, thicknessMm, missing }, where }
}
