import { thermalGrowth, waterDensity, waterMass } from '../../../shared-model/materials'
import { celsius, litresFromUsGallons, mm, poundsFromGrams } from '../../../shared-model/units'
import { answer, number, type Work } from './answer'

/** Water and heat. */
export const MATERIAL_QUANTITIES: Readonly<Record<string, Work>> = {
  'water-density': (inputs) => answer(waterDensity(celsius(number(inputs, 'celsius'))), (kgPerL) => ({ kgPerL })),
  'water-weight': (inputs) =>
    answer(
      waterMass(litresFromUsGallons(number(inputs, 'usGallons')), celsius(number(inputs, 'celsius', 20))),
      (mass) => ({
        lb: poundsFromGrams(mass),
        kg: mass / 1000
      })
    ),
  'thermal-growth': (inputs) => ({
    growthMm: thermalGrowth(mm(number(inputs, 'lengthMm')), number(inputs, 'riseC'), number(inputs, 'coefficientPerC'))
  })
}
