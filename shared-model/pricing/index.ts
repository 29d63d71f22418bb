export { breakEven, breakEvenCrossings, marginOfSafety } from './break-even'
export type {
  PricingFinding,
  PricingFindingCodes,
  PricingProblem,
  PricingProblemCodes,
  ShareTooHigh
} from './codes'
export { grossFromYield } from './gross-from-yield'
export type { LadderEvaluation } from './ladder'
export { LADDER_SIZES, ladder, ladderSteps } from './ladder'
export { learningAverage, learningUnit } from './learning'
export { markupAndMargin, priceFromMarkup, targetCost } from './markup-and-margin'
export { jobUnitCost, overheadRate } from './overhead-rate'
export type { ParcelRules, Sides } from './parcel'
export { billedParcelWeight, lengthPlusGirth, parcelOf } from './parcel'
export type { PriceAsked, PriceReached } from './price-after-fees'
export { priceAfterFees } from './price-after-fees'
export type { PriceEnding } from './price-ending'
export { priceOnEnding } from './price-ending'
export type { PriceInput, ToolUse, UnitOutside, Work } from './price-input'
export type {
  Bought,
  CostParts,
  Crossing,
  LadderStep,
  ParcelSize,
  PricePlan,
  Sensitivity,
  SensitivityInput,
  UnitCost,
  WayPrice
} from './price-plan'
export type { Priced } from './price-plan-of'
export { pricePlan } from './price-plan-of'
export type { Quote, QuoteInput, QuoteItem } from './quote'
export { quote } from './quote'
export { netFromGross, salesTax } from './sales-tax'
export type { ParcelSetup, PricingSetup, WayOfSelling } from './selling'
export { USUAL_DAY_H } from './selling'
export { toolWear } from './tool-wear'
export type { CostInput } from './unit-cost'
export { unitCost } from './unit-cost'
export type { WayInput } from './way-price'
export { labourByStep, materialByLine } from './where-cost-comes-from'
