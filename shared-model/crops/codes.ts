import type { ProblemOf } from '../outcome'

export interface CropsProblemCodes {
  readonly 'crop-figure-outside': {
    readonly figure: string
    readonly value: number
    readonly least: number
    readonly most: number
  }
}

export type CropsProblem = ProblemOf<CropsProblemCodes>
