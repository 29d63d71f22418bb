import {
  type BarsToCut,
  type CutPlan,
  type CuttingSetup,
  type Offcut,
  type Piece,
  planBars,
  type StockBar
} from '../../shared-model/cutting'
import type { Budget } from '../../shared-model/outcome'

/** Invented pieces, stock and setup to plan with. */
export const aPiece = (id: string, lengthMm: number, more: Partial<Piece> = {}): Piece => ({
  id,
  mark: id,
  channelId: `channel-${id}`,
  profileId: 'gutter',
  lengthMm,
  pinnedTo: null,
  ...more
})

export const aBar = (
  id: string,
  lengthMm: number,
  priceMinor: number | null,
  more: Partial<StockBar> = {}
): StockBar => ({
  id,
  profileId: 'gutter',
  lengthMm,
  offer: { priceMinor, supplier: '', pricedOn: '', taxInside: false },
  count: null,
  ...more
})

export const anOffcut = (id: string, lengthMm: number, worthMinor: number, more: Partial<Offcut> = {}): Offcut => ({
  id,
  profileId: 'gutter',
  lengthMm,
  worthMinor,
  cameFrom: '',
  cameOn: '',
  ...more
})

export const setup: CuttingSetup = {
  tool: 'hand_saw',
  toolName: '',
  kerfMm: 2,
  endTrimMm: 5,
  keepFromMm: 300,
  keptWorthPercent: 40,
  joinsAllowed: false
}

export const planned = (asked: Partial<BarsToCut & { budget: Budget }> & Pick<BarsToCut, 'pieces' | 'stock'>) => {
  const result = planBars({ rack: [], setup, budget: { work: 400_000, stop: () => false }, ...asked })
  if (!result.ok) throw new Error(`${result.problem.code} ${JSON.stringify(result.problem.figures)}`)
  return result.value
}

export const onlyCut = (asked: Parameters<typeof planned>[0]): CutPlan => {
  const [cut] = planned(asked).cuts
  if (!cut) throw new Error('no plan')
  return cut
}
