import type { CropsProblem } from './codes'
import type { Crop, Span } from './crop'

/** Everything about a crop's figures that cannot be, each with both bounds. */
export function checkCrop(crop: Crop): readonly CropsProblem[] {
  return [
    ...span(crop, 'pitchMm', crop.pitchMm, 10, 3000),
    ...single(crop, 'canopyMm', crop.canopyMm, 0, 3000),
    ...single(crop, 'plantHeightMm', crop.plantHeightMm, 0, 5000),
    ...span(crop, 'dailyUseMl', crop.dailyUseMl, 0, 10_000),
    ...span(crop, 'ecMsPerCm', crop.ecMsPerCm, 0, 10),
    ...span(crop, 'ph', crop.ph, 3, 10),
    ...single(crop, 'grownMassG', crop.grownMassG, 0, 20_000),
    ...(crop.startLitres === null ? [] : single(crop, 'startLitres', crop.startLitres, 0, 100))
  ]
}

function span(crop: Crop, figure: string, value: Span | null, least: number, most: number): readonly CropsProblem[] {
  if (value === null) return []
  const low = single(crop, figure, value.least, least, most)
  return low.length > 0 ? low : single(crop, figure, value.most, value.least, most)
}

function single(crop: Crop, figure: string, value: number, least: number, most: number): readonly CropsProblem[] {
  if (value >= least && value <= most) return []
  const figures = { figure, value: Number.isFinite(value) ? value : -1, least, most }
  return [{ code: 'crop-figure-outside', figures, where: { partId: crop.id, field: figure } }]
}
