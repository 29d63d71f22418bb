import { type CuttingSetup, type Offcut, planBars, type StockBar } from '../cutting'

export interface RowStock {
  /** null: a bar's price is missing. */
  readonly costMinor: number | null
  /** Left on the bars after the cuts, kept or not. */
  readonly leftOverMm: number
}

/** Work for one set of rows: a handful of pieces is proven well within it. */
const WORK = 4000

/** What the bars for these pieces of one profile cost and leave; null where some piece fits no bar. */
export function stockForRows(
  lengthsMm: readonly number[],
  shop: {
    readonly profileId: string
    readonly stock: readonly StockBar[]
    readonly rack: readonly Offcut[]
    readonly setup: CuttingSetup
    readonly stop: () => boolean
  }
): RowStock | null {
  const planned = planBars({
    pieces: lengthsMm.map((lengthMm, at) => ({
      id: `r${at}`,
      mark: String(at + 1),
      channelId: `r${at}`,
      profileId: shop.profileId,
      lengthMm,
      pinnedTo: null
    })),
    stock: shop.stock,
    rack: shop.rack,
    setup: shop.setup,
    budget: { work: WORK, stop: shop.stop }
  })
  const cut = planned.ok ? planned.value.cuts[0] : undefined
  if (cut === undefined || cut.uncut.length > 0) return null
  const leftOverMm = cut.bars.reduce((sum, bar) => sum + bar.leftoverMm, 0)
  return { costMinor: cut.costMinor === null ? null : cut.costMinor - cut.keptWorthMinor, leftOverMm }
}
