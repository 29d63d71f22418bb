import { benchBoard } from './board'
import { benchCutting } from './cutting'
import { benchEvaluating } from './evaluating'
import { benchLadder } from './ladder'
import { benchDragging, benchHistory, benchOpening } from './large-board'
import type { BenchFigure, BenchRow } from './measure'
import { benchMemory } from './memory'
import { benchPricing } from './pricing'
import { benchRings } from './rings'
import { benchSequencing } from './sequencing'
import { benchSheet } from './sheet'
import { benchSpoilt } from './spoilt'

type Measured = readonly (BenchRow | BenchFigure)[]

const benches: Readonly<Record<string, () => Measured | Promise<Measured>>> = {
  evaluating: benchEvaluating,
  spoilt: benchSpoilt,
  memory: benchMemory,
  cutting: () => benchCutting(),
  rings: benchRings,
  sequencing: benchSequencing,
  pricing: benchPricing,
  ladder: benchLadder,
  sheet: benchSheet,
  board: benchBoard,
  dragging: benchDragging,
  opening: benchOpening,
  history: benchHistory
}

/** Runs the benches named, or all of them, and prints a row each. */
export async function runBench(names: readonly string[], seed: string): Promise<number> {
  const unknown = names.filter((name) => !(name in benches))
  if (unknown.length > 0) {
    console.error(`There is no bench ${unknown.join(', ')}; there are ${Object.keys(benches).join(', ')}.`)
    return 2
  }
  console.log(`seed ${seed}; times in ms: least, median (processor: least, median); checksum of the answers`)
  for (const [name, bench] of Object.entries(benches)) {
    if (names.length > 0 && !names.includes(name)) continue
    console.log(`\n${name}`)
    for (const row of await bench()) console.log(`  ${said(row)}`)
  }
  return 0
}

const said = (row: BenchRow | BenchFigure): string => {
  if ('figure' in row) return `${row.name}: ${row.figure}`
  const { cpu } = row
  const ms = (value: number): string => value.toFixed(cpu === undefined ? 1 : 2).padStart(8)
  const processor = cpu === undefined ? '' : ` (${ms(cpu.minMs)} ${ms(cpu.medianMs)})`
  return `${ms(row.minMs)} ${ms(row.medianMs)}${processor}  ${row.name}  [${row.checksum}]`
}
