import type { BenchPlan } from '../bench'
import type { Bill } from '../bill'
import type { Workshop } from '../design'
import type { FirstFill } from '../reservoir'
import { graduationNm, NM_PER_MM } from '../units'

/** A bench plan without a step: of a design without a channel, or one whose bench plan cannot be worked out. */
export const emptyBench = (workshop: Workshop): BenchPlan => ({
  steps: [],
  holes: [],
  toolChanges: 0,
  leastToolChanges: 0,
  proven: true,
  soughtBy: 'fewest-changes',
  mounts: 0,
  leastMounts: 0,
  handlingS: 0,
  leastHandlingS: 0,
  leastProven: true,
  graduationMm: graduationNm(workshop.shows) / NM_PER_MM,
  largestRoundingMm: 0,
  roundingLimitMm: graduationNm(workshop.shows) / NM_PER_MM / 2,
  setUpS: 0,
  runS: 0,
  workedS: 0,
  elapsedS: 0,
  unit: { setUpS: 0, runS: 0, workedS: 0, elapsedS: 0 }
})

/** A bill that could not be worked out: no line, and no total either. */
export const emptyBill = (currency: string, quantity: number): Bill => ({
  currency,
  quantity,
  lines: [],
  totalMinor: null,
  usedMinor: null,
  restMinor: null,
  oldestPriceOn: null,
  missing: []
})

export const EMPTY_FILL: FirstFill = {
  litres: 0,
  ec: null,
  ecConflicts: [],
  concentrateMl: null,
  expectedEcMsPerCm: null,
  salts: [],
  ppm: {}
}
