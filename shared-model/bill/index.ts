export type { Bill, BillLine, PackBought } from './bill'
export type {
  AmountNeed,
  Bead,
  BilledCuts,
  BillInput,
  BillShop,
  BillUnit,
  BuyingTax,
  ChannelNeeds,
  CountedPart,
  JointNeed,
  Need
} from './bill-input'
export { billOf } from './bill-of'
export type { CementSize } from './cement-joints'
export { CEMENT_JOINTS, cementPerJointMl, jointsPerQuart } from './cement-joints'
export type { PackChoice } from './choose-packs'
export { choosePacks } from './choose-packs'
export type { BillFinding, BillFindingCodes, BillProblem, BillProblemCodes } from './codes'
export { keptSheetWorth } from './kept-sheets'
export { needsOf } from './needs-of'
export type { NeedKind, PackOffer, ShelfItem } from './offer'
export { daysBetween } from './price-age'
export { putOnShelf } from './put-on-shelf'
export { sealantRun, sealantVolume } from './sealant-run'
export type { ShoppingRow, SupplierList } from './shopping-list'
export { shoppingList } from './shopping-list'
