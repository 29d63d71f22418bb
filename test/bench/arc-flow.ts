import type { Highs, ModelData } from 'highs'
import type { CutInstance } from '../../shared-model/cutting'

/**
 * The plain arc-flow model of cutting (J. M. Valério de Carvalho, Annals of Operations Research 86, 1999) handed to the
 * solver library as it is: what the exact method is measured against. Null: not solved to the optimum within the limit.
 */
export const solveArcFlow = (highs: Highs, instance: CutInstance, limitS: number): number | null => {
  const model = arcFlow(highs, instance)
  return highs.withModel(model, (run) => {
    run.options.set({ output_flag: false, time_limit: limitS, mip_rel_gap: 0, random_seed: 1 })
    run.run()
    const solved = run.getModelStatus() === highs.constants.modelStatus.optimal
    return solved ? Math.round(run.getObjectiveValue()) : null
  })
}

interface Arc {
  readonly from: number
  readonly to: number
  /** Place of the demand; −1: nothing is cut. */
  readonly demand: number
}

/** Nodes are the lengths that pieces add up to; arcs are pieces, and a step to the next node that cuts nothing. */
const arcFlow = (highs: Highs, { kerf, stock, demand }: CutInstance): ModelData => {
  const rooms = stock.map((bar) => bar.length - bar.trim + kerf)
  const nodes = nodesOf(
    demand.map(({ length, qty }) => ({ grown: length + kerf, qty })),
    Math.max(...rooms)
  )
  const place = new Map(nodes.map((node, at) => [node, at]))
  const arcs: Arc[] = []
  nodes.forEach((node, at) => {
    demand.forEach(({ length }, index) => {
      const to = place.get(node + length + kerf)
      if (to !== undefined) arcs.push({ from: at, to, demand: index })
    })
    if (at + 1 < nodes.length) arcs.push({ from: at, to: at + 1, demand: -1 })
  })
  // One column for the bars of each stock: from its last node back to the start.
  const ends = rooms.map((room) => nodes.findLastIndex((node) => node <= room))
  const columns = arcs.length + stock.length
  const rows = nodes.length + demand.length
  const starts = new Int32Array(columns + 1)
  const indices: number[] = []
  const values: number[] = []
  arcs.forEach((arc, at) => {
    indices.push(arc.from, arc.to, ...(arc.demand < 0 ? [] : [nodes.length + arc.demand]))
    values.push(-1, 1, ...(arc.demand < 0 ? [] : [1]))
    starts[at + 1] = indices.length
  })
  ends.forEach((end, s) => {
    if (end > 0) {
      indices.push(0, end)
      values.push(1, -1)
    }
    starts[arcs.length + s + 1] = indices.length
  })
  return {
    numCols: columns,
    numRows: rows,
    sense: highs.constants.objectiveSense.minimize,
    colCost: Float64Array.from({ length: columns }, (_, at) => stock[at - arcs.length]?.cost ?? 0),
    colLower: new Float64Array(columns),
    colUpper: Float64Array.from({ length: columns }, (_, at) => stock[at - arcs.length]?.count ?? highs.infinity),
    rowLower: Float64Array.from({ length: rows }, (_, at) => demand[at - nodes.length]?.qty ?? 0),
    rowUpper: Float64Array.from({ length: rows }, (_, at) => (at < nodes.length ? 0 : highs.infinity)),
    integrality: new Int32Array(columns).fill(highs.constants.variableType.integer),
    matrix: {
      format: 'csc',
      numRows: rows,
      numCols: columns,
      starts,
      indices: Int32Array.from(indices),
      values: Float64Array.from(values)
    }
  }
}

const nodesOf = (kinds: readonly { readonly grown: number; readonly qty: number }[], room: number): number[] => {
  let reached = new Set([0])
  for (const { grown, qty } of kinds) {
    const more = new Set(reached)
    for (const node of reached) {
      for (let n = 1; n <= qty && node + n * grown <= room; n++) more.add(node + n * grown)
    }
    reached = more
  }
  return [...reached].sort((a, b) => a - b)
}
