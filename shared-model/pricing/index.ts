export type { LadderStep, PricePlan, UnitCost, WayPrice } from './price-plan'
export type { ParcelSetup, PricingSetup, WayOfSelling } from './selling'
