import { writePdf } from '../../main/services/pdf'
import { DEMOS } from '../../shared-model/design'
import { docDefinition, type PdfDocument } from '../../shared-model/paper'
import { evaluate, type Plan } from '../../shared-model/plan'
import { buildSheet } from '../../shared-model/sheet'
import type { BenchRow } from './pricing'

const ON = '2026-03-14'
const RUNS = 5

/** Times of the build sheet; the data are fixed, so are the checksums (bytes of the PDF). */
export const benchSheet = async (): Promise<readonly BenchRow[]> => {
  const [kitchen, market] = DEMOS
  if (kitchen === undefined || market === undefined) return []
  const batch = { ...market, design: { ...market.design, quantity: 24 } }
  const rows: BenchRow[] = []
  for (const [name, { design, workshop }] of [
    ['one unit', kitchen],
    ['batch of 24 with templates', batch]
  ] as const) {
    const plan: Plan = evaluate(design, workshop, ON)
    const document = (): PdfDocument =>
      docDefinition(buildSheet(plan, design, workshop), { paper: workshop.shows.paper })
    rows.push(await row(`sheet, ${name}: data and document`, async () => document().content.length))
    rows.push(await row(`sheet, ${name}: PDF written`, async () => (await writePdf(document())).length))
    // What the writer alone needs: its document is made before the clock starts (it may be used once only).
    const ready = Array.from({ length: RUNS + 1 }, document)
    rows.push(
      await row(`sheet, ${name}: PDF writer alone`, async () => (await writePdf(ready.pop() ?? document())).length)
    )
  }
  return rows
}

const row = async (name: string, work: () => Promise<number>): Promise<BenchRow> => {
  const times: number[] = []
  let checksum = await work()
  for (let run = 0; run < RUNS; run += 1) {
    const start = performance.now()
    checksum = await work()
    times.push(performance.now() - start)
  }
  times.sort((a, b) => a - b)
  return { name, minMs: times[0] ?? 0, medianMs: times[Math.floor(RUNS / 2)] ?? 0, checksum }
}
