import type { Bill } from './bill'
import type { BillUnit } from './bill-input'
import type { NeedKind } from './offer'

export interface ShoppingRow {
  readonly supplier: string
  readonly need: NeedKind
  readonly partId: string
  readonly name: string
  readonly packs: number
  readonly packSize: number
  readonly unit: BillUnit
  readonly eachMinor: number
  readonly totalMinor: number
  readonly pricedOn: string
}

export interface SupplierList {
  readonly supplier: string
  readonly rows: readonly ShoppingRow[]
  readonly totalMinor: number
}

/** What to buy where: a list for each supplier in the order of the alphabet, lines in the order of the bill. */
export function shoppingList(bill: Bill): readonly SupplierList[] {
  const rows = bill.lines.flatMap((line) =>
    line.packs.map((pack) => ({
      supplier: pack.supplier,
      need: line.need,
      partId: line.partId,
      name: pack.name,
      packs: pack.packs,
      packSize: pack.packSize,
      unit: line.unit,
      eachMinor: pack.eachMinor,
      totalMinor: pack.totalMinor,
      pricedOn: pack.pricedOn
    }))
  )
  const suppliers = [...new Set(rows.map((row) => row.supplier))].sort()
  return suppliers.map((supplier) => {
    const own = rows.filter((row) => row.supplier === supplier)
    return { supplier, rows: own, totalMinor: own.reduce((sum, row) => sum + row.totalMinor, 0) }
  })
}
