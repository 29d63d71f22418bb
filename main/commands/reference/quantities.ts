import { AMOUNT_QUANTITIES } from './amount-quantities'
import { type Answer, InputMissing, type Work } from './answer'
import { LOAD_QUANTITIES } from './load-quantities'
import { MATERIAL_QUANTITIES } from './material-quantities'
import { PARCEL_QUANTITIES } from './parcel-quantities'
import { PRICE_QUANTITIES } from './price-quantities'
import { SECTION_QUANTITIES } from './section-quantities'
import { WATER_QUANTITIES } from './water-quantities'
import { WORKSHOP_QUANTITIES } from './workshop-quantities'

/** Every quantity by its name; a check whose inputs are not all there has no answer, and says which is missing. */
export const QUANTITIES: Readonly<Record<string, Work>> = Object.fromEntries(
  Object.entries({
    ...AMOUNT_QUANTITIES,
    ...MATERIAL_QUANTITIES,
    ...LOAD_QUANTITIES,
    ...PARCEL_QUANTITIES,
    ...PRICE_QUANTITIES,
    ...WATER_QUANTITIES,
    ...SECTION_QUANTITIES,
    ...WORKSHOP_QUANTITIES
  }).map(([name, work]): [string, Work] => [name, guarded(work)])
)

function guarded(work: Work): Work {
  return (inputs): Answer => {
    try {
      return work(inputs)
    } catch (error) {
      if (error instanceof InputMissing) return { problem: error.message }
      if (error instanceof RangeError) return { problem: 'not-usable' }
      throw error
    }
  }
}
