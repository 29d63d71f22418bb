export type { CutBar, CutPlan, Piece } from './cut-plan'
export type { CutToolKind, CuttingSetup, Offcut, PricedOffer, StockBar } from './stock'
