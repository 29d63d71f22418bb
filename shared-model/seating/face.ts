import { boreOf, flatWidth, type Section } from '../profile'

/** The upper face of a channel as a seat sees it; heights are from the channel's inside floor. */
export interface Face {
  readonly shape: Section['shape']
  /** Upper edge of a hole: the outside of the face, at the crown of a round pipe. */
  readonly topMm: number
  readonly undersideMm: number
  readonly wallMm: number
  /** Flat part of the face, across; the whole outside of a round pipe. */
  readonly flatMm: number
  /** Whole outside width of the channel under it. */
  readonly outsideWidthMm: number
  /** Outside radius of a round pipe; null on a flat face. */
  readonly outsideRadiusMm: number | null
  /** Inside width and corner radius of the bore: a wide bottom meets a round floor before its lowest point. */
  readonly boreWidthMm: number
  readonly boreCornerMm: number
}

/** The upper face of a section, by its average wall. */
export function faceOf(section: Section): Face {
  const bore = boreOf(section)
  const undersideMm = bore.heightMm
  const round = section.shape === 'round'
  return {
    shape: section.shape,
    topMm: undersideMm + section.averageWallMm,
    undersideMm,
    wallMm: section.averageWallMm,
    flatMm: round ? section.widthMm : flatWidth(section),
    outsideWidthMm: section.widthMm,
    outsideRadiusMm: round ? section.widthMm / 2 : null,
    boreWidthMm: bore.widthMm,
    boreCornerMm: bore.cornerRadiusMm
  }
}

/** Height above the inside floor at which a flat bottom of a diameter comes to rest between rounded lower corners. */
export function floorUnder(face: Face, diameterMm: number): number {
  const half = (diameterMm - (face.boreWidthMm - 2 * face.boreCornerMm)) / 2
  if (half <= 0) return 0
  const r = face.boreCornerMm
  return half >= r ? r : r - Math.sqrt(r * r - half * half)
}
