import { benchBoard } from './board'
import { benchCutting } from './cutting'
import { benchEvaluating } from './evaluating'
import type { BenchRow } from './measure'
import { benchPricing } from './pricing'
import { benchRings } from './rings'
import { benchSequencing } from './sequencing'
import { benchSheet } from './sheet'

const benches: Readonly<Record<string, () => readonly BenchRow[] | Promise<readonly BenchRow[]>>> = {
  evaluating: benchEvaluating,
  cutting: () => benchCutting(),
  rings: benchRings,
  sequencing: benchSequencing,
  pricing: benchPricing,
  sheet: benchSheet,
  board: benchBoard
}

/** Runs the benches named, or all of them, and prints a row each. */
export async function runBench(names: readonly string[], seed: string): Promise<number> {
  const unknown = names.filter((name) => !(name in benches))
  if (unknown.length > 0) {
    console.error(`There is no bench ${unknown.join(', ')}; there are ${Object.keys(benches).join(', ')}.`)
    return 2
  }
  console.log(`seed ${seed}; times in ms: least, median; checksum of the answers`)
  for (const [name, bench] of Object.entries(benches)) {
    if (names.length > 0 && !names.includes(name)) continue
    console.log(`\n${name}`)
    for (const row of await bench()) {
      console.log(
        `  ${row.minMs.toFixed(1).padStart(9)} ${row.medianMs.toFixed(1).padStart(9)}  ${row.name}  [${row.checksum}]`
      )
    }
  }
  return 0
}
