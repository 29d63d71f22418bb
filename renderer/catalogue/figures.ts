import type { PartsUsed } from '../../shared-model/design'
import { fieldName } from '../../shared-model/words'

/** Shelves of a design whose parts have figures of their own; a riser's figures are those of its cup. */
export type FigureShelf = Exclude<keyof PartsUsed, 'risers'>

export type FigureUnit = 'length' | 'mass' | 'share'

/** One figure of a part that can be measured. */
export interface PartFigure {
  readonly field: string
  readonly label: string
  readonly unit: FigureUnit
}

const FIELDS: Readonly<Record<FigureShelf, readonly string[]>> = {
  profiles: ['widthMm', 'heightMm', 'outsideToleranceMm', 'averageWallMm', 'leastWallMm', 'cornerRadiusMm'],
  closures: ['addsLengthMm', 'insideDepthMm', 'outsideDepthMm', 'proudMm', 'massG'],
  cups: ['rimOutsideMm', 'rimThicknessMm', 'bodyUnderRimMm', 'bottomMm', 'heightMm', 'wallMm', 'floodedShare', 'massG'],
  collars: ['thicknessMm', 'squeezeShare'],
  plantCollars: ['outsideMm', 'thicknessMm'],
  saws: ['diameterMm', 'kerfMm', 'depthMm', 'oversizeMm']
}

/** In round profile the width is the outside diameter, and the height goes with it. */
const ROUND_FIELDS = ['widthMm', 'outsideToleranceMm', 'averageWallMm', 'leastWallMm']

/** The figures of a part on this shelf, in the order in which they are measured. */
export function figuresOf(shelf: FigureShelf, round: boolean): readonly PartFigure[] {
  const fields = shelf === 'profiles' && round ? ROUND_FIELDS : FIELDS[shelf]
  return fields.map((field) => ({
    field,
    label: round && field === 'widthMm' ? 'Outside diameter' : capital(fieldName(field)),
    unit: field.endsWith('Share') ? 'share' : field.endsWith('G') ? 'mass' : 'length'
  }))
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
