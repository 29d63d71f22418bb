import { type DecimalMark, parseLength } from '../../shared-model/units'
import type { Lettering, Sheet } from './read-pdf'

/** What a worker reads off the printed sheet; lengths in mm as the print says them. */
export interface ReadBuild {
  readonly pieces: readonly { mark: string; bar: string; lengthMm: number; startMm: number; channel: string }[]
  readonly bars: readonly {
    mark: string
    lengthMm: number
    leftMm: number
    pieces: number
    kept: boolean
    from: string
  }[]
  readonly stops: readonly { mm: number; pieces: number }[]
  readonly holes: readonly ReadHole[]
  readonly channels: readonly { mark: string; lengthMm: number; plants: number }[]
}

interface ReadHole {
  readonly channel: string
  readonly mark: string
  readonly atMm: number
  readonly face: string
  readonly upMm: number | null
  readonly diameterMm: number
  readonly saws: string
  readonly sits: string
}

export const lengthOf = (words: string, units: 'in' | 'mm', decimalMark: DecimalMark): number => {
  const read = parseLength(words.replace('Ø', '').trim(), { shown: units, decimalMark })
  if (!read.ok) throw new Error(`not a length: ${words}`)
  return read.value
}

/** Rebuilds the build from lettering and its place alone. */
export const readBuild = (sheets: readonly Sheet[], units: 'in' | 'mm', decimalMark: DecimalMark): ReadBuild => {
  const mm = (words: string): number => lengthOf(words, units, decimalMark)
  const tables = sheets.flatMap(tablesOf)
  const rows = (heading: RegExp) =>
    tables.flatMap((table) => {
      const found = heading.exec(table.heading)
      return found === null ? [] : table.rows.map((row) => ({ row, of: found[1] ?? '' }))
    })
  return {
    channels: rows(/^Channels of one unit$/).map(({ row }) => ({
      mark: of(row, 'No.'),
      lengthMm: mm(of(row, 'Cut length')),
      plants: Number(of(row, 'Plants'))
    })),
    pieces: rows(/^Pieces in cutting order/).map(({ row }) => ({
      mark: of(row, 'Piece'),
      bar: of(row, 'Bar'),
      lengthMm: mm(of(row, 'Length')),
      startMm: mm(of(row, 'Starts at')),
      channel: of(row, 'For channel').replace('Channel ', '')
    })),
    stops: rows(/^Stop settings/).map(({ row }) => ({ mm: mm(of(row, 'Stop at')), pieces: Number(of(row, 'Pieces')) })),
    bars: rows(/^Bars, and what is left/).map(({ row }) => ({
      mark: of(row, 'Bar'),
      lengthMm: mm(of(row, 'Bar length')),
      leftMm: mm(of(row, 'Left over')),
      pieces: Number(of(row, 'Pieces')),
      kept: of(row, 'Goes to') === 'back on the rack',
      from: of(row, 'Comes from')
    })),
    holes: rows(/^Holes of channel (\S+)$/).map(({ row, of: channel }) => {
      const [face = '', up] = of(row, 'Face').split(', ')
      return {
        channel,
        mark: of(row, 'Hole'),
        atMm: mm(of(row, 'From datum')),
        face,
        upMm: up === undefined ? null : mm(up.replace(' up', '')),
        diameterMm: mm(of(row, 'Diameter')),
        saws: of(row, 'Saw, in this order'),
        sits: of(row, 'What sits there')
      }
    })
  }
}

type Row = ReadonlyMap<string, string>
const of = (row: Row, head: string): string => {
  const found = row.get(head)
  if (found === undefined) throw new Error(`no column ${head} among ${[...row.keys()].join(', ')}`)
  return found
}

interface Table {
  readonly heading: string
  readonly rows: readonly Row[]
}

const HEADING_PT = 11.5
const TABLE_PT = 9

/** Tables of a page: a heading, a line of heads below it, then rows; a row begins where its first column has ink. */
const tablesOf = (sheet: Sheet): Table[] => {
  const flat = sheet.lettering.filter((one) => !one.turned)
  const headings = flat.filter((one) => Math.abs(one.sizePt - HEADING_PT) < 0.1).sort((a, b) => a.yMm - b.yMm)
  return headings.flatMap((heading, index): Table[] => {
    const until = Math.min(
      headings[index + 1]?.yMm ?? Number.POSITIVE_INFINITY,
      ...flat.filter((one) => one.sizePt > 14 && one.yMm > heading.yMm).map((one) => one.yMm)
    )
    const within = flat.filter((one) => one.yMm > heading.yMm + 1 && one.yMm < until - 1)
    const first = Math.min(...within.map((one) => one.yMm))
    const heads = within.filter((one) => Math.abs(one.yMm - first) < 0.3 && Math.abs(one.sizePt - TABLE_PT) < 0.1)
    if (heads.length < 2) return []
    const body = within.filter(
      (one) => one.yMm > first + 2 && one.xMm > heading.xMm + 0.5 && one.yMm < sheet.heightMm - 24
    )
    return [{ heading: heading.text, rows: rowsOf(body, heads) }]
  })
}

const rowsOf = (body: readonly Lettering[], heads: readonly Lettering[]): Row[] => {
  const ticks = body.filter((one) => one.text === '☐').map((one) => one.yMm - 1.5)
  const leading = body.filter((one) => Math.abs(one.xMm - (heads[0]?.xMm ?? 0)) < 0.3).map((one) => one.yMm - 0.5)
  const starts = (ticks.length > 0 ? ticks : leading).sort((a, b) => a - b)
  return starts.map((start, index) => {
    const next = starts[index + 1] ?? Number.POSITIVE_INFINITY
    const cells = new Map<string, string>(heads.map((head) => [head.text, '']))
    for (const one of body) {
      if (one.text === '☐' || one.yMm < start - 0.6 || one.yMm >= next - 0.6) continue
      const head = [...heads].sort((a, b) => apart(one, a) - apart(one, b))[0]
      if (head !== undefined) cells.set(head.text, `${cells.get(head.text) ?? ''} ${one.text}`.trim())
    }
    return cells
  })
}

/** Lettering belongs to the head whose left or right edge it shares. */
const apart = (one: Lettering, head: Lettering): number =>
  Math.min(Math.abs(one.xMm - head.xMm), Math.abs(one.xMm + one.widthMm - head.xMm - head.widthMm))
