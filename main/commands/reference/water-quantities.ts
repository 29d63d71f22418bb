import {
  conductivityPpm,
  fillDepth,
  litresPerPlant,
  oxideToElement,
  saltForTarget,
  solutionPpm,
  tankDrawDown,
  usableSolution
} from '../../../shared-model/reservoir'
import { litres, litresFromUsGallons, MM_PER_INCH, mm, mmFromInches } from '../../../shared-model/units'
import { answer, figures, number, text, type Work } from './answer'

/** Tanks, draw-down and nutrient arithmetic. */
export const WATER_QUANTITIES: Readonly<Record<string, Work>> = {
  'tank-draw-down': (inputs) =>
    answer(
      tankDrawDown(
        litres(number(inputs, 'startLitres')),
        mm(number(inputs, 'startDepthMm')),
        mm(number(inputs, 'endDepthMm'))
      ),
      (tank) => tank
    ),
  'litres-per-plant': (inputs) =>
    answer(
      litresPerPlant(litresFromUsGallons(number(inputs, 'usGallons')), number(inputs, 'plants')),
      (litresPerPlant) => ({ litresPerPlant })
    ),
  'fill-depth': (inputs) =>
    answer(
      fillDepth(
        mmFromInches(number(inputs, 'lengthIn')),
        mmFromInches(number(inputs, 'widthIn')),
        litresFromUsGallons(number(inputs, 'usGallons'))
      ),
      (depth) => ({ depthIn: depth / MM_PER_INCH, depthMm: depth })
    ),
  'usable-solution': (inputs) =>
    answer(usableSolution(litres(number(inputs, 'litres')), number(inputs, 'endShare')), (left) => left),
  'salt-for-target': (inputs) =>
    answer(
      saltForTarget({
        targetPpm: number(inputs, 'targetPpm'),
        elementShare: number(inputs, 'elementShare'),
        otherShares: figures(inputs, 'otherShares'),
        litres: litres(number(inputs, 'litres', 1))
      }),
      (salt) => salt
    ),
  'oxide-to-element': (inputs) =>
    answer(oxideToElement(text(inputs, 'oxide'), number(inputs, 'percent')), (element) => element),
  'solution-ppm': (inputs) => answer(solutionPpm(figures(inputs, 'mmolPerL')), (ppm) => ({ ppm })),
  'conductivity-scale': (inputs) =>
    answer(conductivityPpm(number(inputs, 'msPerCm'), number(inputs, 'ppmPerMsPerCm')), (ppm) => ({ ppm }))
}
