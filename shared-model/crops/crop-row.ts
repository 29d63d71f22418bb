import type { Evidence } from '../sources'
import type { Span } from './crop'

/** Lengths in mm, use in mL a day, conductivity in mS/cm at 25 C, mass in g, volume in L. */
export interface CropRow {
  readonly id: string
  readonly name: string
  readonly pitch: Span | null
  readonly canopy: number
  readonly height: number
  readonly use: Span | null
  readonly ec: Span | null
  readonly ph: Span | null
  readonly mass: number
  readonly start: number | null
  readonly conflicts?: readonly string[]
  readonly evidence: Readonly<Record<string, Evidence>>
}

export const span = (least: number, most: number = least): Span => ({ least, most })
export const printed = (source: string, text: string, grade: Evidence['grade'] = 'published-in-part'): Evidence => ({
  grade,
  source,
  printed: text
})
export const memory: Evidence = { grade: 'from-memory', source: 'memory' }

/** Small greens: the lower of the litres that a bucket of four plants leaves each. */
export const SMALL_GREENS_L = 2.4
export const HEAD_L = 4
