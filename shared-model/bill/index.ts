export type { Bill, BillLine } from './bill'
export type { NeedKind, PackOffer, ShelfItem } from './offer'
