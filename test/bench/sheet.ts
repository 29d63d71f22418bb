import { writePdf } from '../../main/services/pdf'
import { DEMOS } from '../../shared-model/design'
import { docDefinition, type PdfDocument } from '../../shared-model/paper'
import { evaluate, type Plan } from '../../shared-model/plan'
import { buildSheet } from '../../shared-model/sheet'
import { type BenchFigure, type BenchRow, leastAndMedian } from './measure'

const ON = '2026-03-14'
const RUNS = 11

/** Times of the build sheet; the data are fixed, so are the checksums (bytes of the PDF). */
export const benchSheet = async (): Promise<readonly (BenchRow | BenchFigure)[]> => {
  const [kitchen, market] = DEMOS
  if (kitchen === undefined || market === undefined) return []
  const batch = { ...market, design: { ...market.design, quantity: 24 } }
  const rows: (BenchRow | BenchFigure)[] = []
  for (const [name, { design, workshop }] of [
    ['one unit', kitchen],
    ['batch of 24 with templates', batch]
  ] as const) {
    const plan: Plan = evaluate(design, workshop, ON)
    const document = (): PdfDocument =>
      docDefinition(buildSheet(plan, design, workshop), { paper: workshop.shows.paper })
    rows.push(...(await besideTheWriter(`sheet, ${name}`, document)))
  }
  return rows
}

interface Taken {
  readonly wallMs: number
  readonly cpuMs: number
}

const timed = async (work: () => Promise<number>): Promise<Taken & { readonly checksum: number }> => {
  const used = process.cpuUsage()
  const start = performance.now()
  const checksum = await work()
  const wallMs = performance.now() - start
  const { user, system } = process.cpuUsage(used)
  return { wallMs, cpuMs: (user + system) / 1000, checksum }
}

/**
 * The sheet written, and the PDF writer alone on the same document made before its clock starts (it may be used once only):
 * in turn, so that what else the machine does falls on both alike.
 */
const besideTheWriter = async (
  name: string,
  document: () => PdfDocument
): Promise<readonly (BenchRow | BenchFigure)[]> => {
  const written: Taken[] = []
  const alone: Taken[] = []
  let checksum = 0
  for (let run = -1; run < RUNS; run += 1) {
    const ready = document()
    const writer = await timed(async () => (await writePdf(ready)).length)
    const sheet = await timed(async () => (await writePdf(document())).length)
    checksum = sheet.checksum
    if (run < 0) continue
    alone.push(writer)
    written.push(sheet)
  }
  const row = (what: string, taken: readonly Taken[]): BenchRow => ({
    name: `${name}: ${what}`,
    ...leastAndMedian(taken.map(({ wallMs }) => wallMs)),
    cpu: leastAndMedian(taken.map(({ cpuMs }) => cpuMs)),
    checksum
  })
  const [whole, writer] = [row('PDF written', written), row('PDF writer alone', alone)]
  const times = (of: number, to: number): string => (of / to).toFixed(2)
  return [
    whole,
    writer,
    {
      name: `${name}: times the writer alone, least and median (processor)`,
      figure: `${times(whole.minMs, writer.minMs)} ${times(whole.medianMs, writer.medianMs)} (${times(whole.cpu?.minMs ?? 0, writer.cpu?.minMs ?? 1)} ${times(whole.cpu?.medianMs ?? 0, writer.cpu?.medianMs ?? 1)})`
    }
  ]
}
