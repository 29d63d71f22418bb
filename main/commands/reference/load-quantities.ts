import { roundSection } from '../../../shared-model/profile'
import { fullPipeSag, liftingLimit, simpleSpanSag, tipAngleDeg } from '../../../shared-model/structure'
import {
  GRAMS_PER_POUND,
  MM_PER_FOOT,
  MM_PER_INCH,
  megapascals,
  megapascalsFromPsi,
  mm,
  mm4,
  mmFromFeet,
  mmFromInches,
  poundsFromGrams
} from '../../../shared-model/units'
import { answer, number, type Work } from './answer'

/** g/cm3 of one pound to the cubic foot. */
const KG_PER_L_PER_LB_PER_FT3 = GRAMS_PER_POUND / (MM_PER_FOOT / 10) ** 3

/** Sag, tipping and lifting. */
export const LOAD_QUANTITIES: Readonly<Record<string, Work>> = {
  'simple-span-sag': (inputs) =>
    answer(
      simpleSpanSag(
        {
          loadNPerMm: number(inputs, 'loadNPerM') / 1000,
          modulusMPa: megapascals(number(inputs, 'modulusGPa') * 1000),
          secondMomentMm4: mm4(number(inputs, 'secondMomentCm4') * 1e4)
        },
        mm(number(inputs, 'spanM') * 1000)
      ),
      (sagMm) => ({ sagMm })
    ),
  'full-pipe-sag': (inputs) =>
    answer(
      fullPipeSag(
        roundSection(mmFromInches(number(inputs, 'outsideIn')), mmFromInches(number(inputs, 'boreIn'))),
        {
          gramsPerMm: (number(inputs, 'pipeWeightLbPerFt') * GRAMS_PER_POUND) / MM_PER_FOOT,
          densityKgPerL: number(inputs, 'waterLbPerFt3') * KG_PER_L_PER_LB_PER_FT3,
          modulusMPa: megapascalsFromPsi(number(inputs, 'modulusPsi'))
        },
        mmFromFeet(number(inputs, 'spanFt'))
      ),
      (sag) => ({ sagIn: sag / MM_PER_INCH, sagMm: sag })
    ),
  'tip-angle': (inputs) =>
    answer(tipAngleDeg(mm(number(inputs, 'halfBaseMm')), mm(number(inputs, 'massCentreHeightMm'))), (tipAngleDeg) => ({
      tipAngleDeg
    })),
  'lifting-limit': (inputs) =>
    answer(
      liftingLimit({
        horizontalMm: number(inputs, 'horizontalIn') * MM_PER_INCH,
        verticalMm: number(inputs, 'verticalIn') * MM_PER_INCH,
        travelMm: number(inputs, 'travelIn') * MM_PER_INCH,
        asymmetryDeg: number(inputs, 'asymmetryDeg', 0),
        frequencyFactor: number(inputs, 'frequencyFactor', 1),
        gripFactor: number(inputs, 'gripFactor', 1)
      }),
      (limit) => ({ lb: poundsFromGrams(limit), kg: limit / 1000 })
    )
}
