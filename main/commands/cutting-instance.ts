import type { CutInstance } from '../../shared-model/cutting'

/** One line of an instance file, read. */
export interface ReadInstance {
  readonly name: string
  readonly instance: CutInstance
  /** One stock length without a cost: fewest bars. */
  readonly inBars: boolean
  readonly optimum: number | null
}

type Fields = Readonly<Record<string, unknown>>

/** Reads `{name, stock: [{length, cost?, count?}], kerf?, trim?, demand: [{length, qty}], optimum?}`; else says the field. */
export const readInstance = (line: string): ReadInstance | string => {
  let read: unknown
  try {
    read = JSON.parse(line)
  } catch {
    return 'is not JSON'
  }
  if (!isFields(read)) return 'is not an object'
  const kerf = whole(read.kerf ?? 0, 0)
  if (kerf === null) return 'kerf: a whole number from 0 is wanted'
  const trim = whole(read.trim ?? 0, 0)
  if (trim === null) return 'trim: a whole number from 0 is wanted'
  const optimum = read.optimum ?? null
  if (optimum !== null && typeof optimum !== 'number') return 'optimum: a number is wanted'
  const stock = readStock(read.stock, trim)
  if (typeof stock === 'string') return stock
  const demand = readDemand(read.demand)
  if (typeof demand === 'string') return demand
  const tooMuch = beyondWhole(kerf, stock.bars, demand)
  if (tooMuch !== null) return tooMuch
  const inBars = stock.inBars
  return {
    name: typeof read.name === 'string' ? read.name : '',
    instance: { kerf, stock: stock.bars, demand },
    inBars,
    optimum
  }
}

const readStock = (given: unknown, trim: number): { bars: CutInstance['stock']; inBars: boolean } | string => {
  if (!Array.isArray(given) || given.length === 0) return 'stock: a list of at least one bar is wanted'
  const bars: CutInstance['stock'][number][] = []
  for (const [at, bar] of given.entries()) {
    if (!isFields(bar)) return `stock[${at}]: an object is wanted`
    const length = whole(bar.length, 1)
    if (length === null) return `stock[${at}].length: a whole number from 1 is wanted`
    const cost = whole(bar.cost ?? length, 0)
    if (cost === null) return `stock[${at}].cost: a whole number from 0 is wanted`
    const limited = bar.count !== undefined && bar.count !== null
    const count = limited ? whole(bar.count, 0) : null
    if (limited && count === null) return `stock[${at}].count: a whole number from 0 is wanted`
    bars.push({ length, cost, count, trim: limited ? 0 : trim, keep: null, lot: at })
  }
  const inBars = given.every(
    (bar, at) => isFields(bar) && (bar.cost ?? null) === null && bars[at]?.length === bars[0]?.length
  )
  return { bars, inBars }
}

const readDemand = (given: unknown): CutInstance['demand'] | string => {
  if (!Array.isArray(given)) return 'demand: a list is wanted'
  const demand: CutInstance['demand'][number][] = []
  for (const [at, piece] of given.entries()) {
    if (!isFields(piece)) return `demand[${at}]: an object is wanted`
    const length = whole(piece.length, 1)
    if (length === null) return `demand[${at}].length: a whole number from 1 is wanted`
    const qty = whole(piece.qty, 0)
    if (qty === null) return `demand[${at}].qty: a whole number from 0 is wanted`
    demand.push({ length, qty, lotGroup: null })
  }
  return demand
}

/** Sums that whole numbers do not hold exactly any more: with them nothing could be proven. */
const beyondWhole = (kerf: number, bars: CutInstance['stock'], demand: CutInstance['demand']): string | null => {
  const pieces = demand.reduce((sum, { qty }) => sum + qty, 0)
  if (pieces > MOST_PIECES) return `demand: ${MOST_PIECES} pieces together at most`
  const long = bars.findIndex(({ length }) => length + kerf > MOST_LENGTH)
  if (long >= 0) return `stock[${long}].length: with the kerf ${MOST_LENGTH} at most`
  const piece = demand.findIndex(({ length }) => length + kerf > MOST_LENGTH)
  if (piece >= 0) return `demand[${piece}].length: with the kerf ${MOST_LENGTH} at most`
  const dear = bars.findIndex(({ cost }) => cost * Math.max(1, pieces) > Number.MAX_SAFE_INTEGER)
  return dear < 0
    ? null
    : `stock[${dear}].cost: for ${pieces} pieces ${Math.floor(Number.MAX_SAFE_INTEGER / pieces)} at most (a cost not given is the length)`
}

const MOST_PIECES = 1e9
const MOST_LENGTH = 1e15

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const whole = (value: unknown, least: number): number | null =>
  typeof value === 'number' && Number.isSafeInteger(value) && value >= least ? value : null
