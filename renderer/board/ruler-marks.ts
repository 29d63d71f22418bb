import type { Shows } from '../../shared-model/design'

export interface RulerMark {
  readonly atMm: number
  readonly label: string | null
}

const MM_STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000]
const INCH_STEPS = [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 6, 12, 24, 48]
const MM_PER_INCH = 25.4
/** Labels stand at least this far apart, marks this far. */
const LABEL_PX = 56
const MARK_PX = 7

/** The marks of a ruler from one millimetre to another: as fine as can be told apart, labels where they do not touch. */
export function rulerMarks(fromMm: number, toMm: number, pxPerMm: number, units: Shows['units']): readonly RulerMark[] {
  const unitMm = units === 'in' ? MM_PER_INCH : 1
  const steps = units === 'in' ? INCH_STEPS : MM_STEPS
  const last = steps.at(-1) ?? 1
  const fine = steps.find((step) => step * unitMm * pxPerMm >= MARK_PX) ?? last
  const labelled =
    steps.find((step) => step * unitMm * pxPerMm >= LABEL_PX && Number.isInteger(step / fine) && step >= 1) ?? last
  const every = Math.max(1, Math.round(labelled / fine))
  const first = Math.ceil(fromMm / (fine * unitMm))
  const end = Math.floor(toMm / (fine * unitMm))
  const marks: RulerMark[] = []
  for (let serial = first; serial <= end && marks.length < 4000; serial += 1) {
    const label = serial % every === 0 ? `${Math.round(serial * fine)}` : null
    marks.push({ atMm: serial * fine * unitMm, label })
  }
  return marks
}
