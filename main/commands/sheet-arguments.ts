import type { Paper } from '../../shared-model/paper'

export interface SheetArguments {
  readonly file: string
  readonly out: string
  readonly workshop: string | null
  readonly paper: Paper | null
  readonly units: 'in' | 'mm' | null
  /** ISO date. */
  readonly on: string
  readonly prices: boolean
}

const USAGE =
  'sheet FILE.json --out DIR [--workshop FILE.json] [--paper letter|a4] [--units in|mm] [--date YYYY-MM-DD] [--no-prices]'
const VALUED = ['--out', '--workshop', '--paper', '--units', '--date']

/** The arguments read, or one line that says what is wrong. */
export const sheetArguments = (argv: readonly string[], today = new Date()): SheetArguments | string => {
  const given = new Map<string, string>()
  const files: string[] = []
  let prices = true
  for (let at = 0; at < argv.length; at += 1) {
    const word = argv[at] ?? ''
    if (word === '--no-prices') prices = false
    else if (VALUED.includes(word)) {
      const value = argv[at + 1]
      if (value === undefined || value === '' || value.startsWith('--')) return `${word}: a value is wanted. ${USAGE}`
      given.set(word, value)
      at += 1
    } else if (word.startsWith('--')) return `${word}: there is no such option. ${USAGE}`
    else files.push(word)
  }
  const [file, more] = files
  const out = given.get('--out')
  if (file === undefined || file === '') return `FILE.json: a design file is wanted. ${USAGE}`
  if (more !== undefined) return `${more}: one design file at a time. ${USAGE}`
  if (out === undefined) return `--out: a folder is wanted. ${USAGE}`
  const paper = given.get('--paper') ?? null
  if (paper !== null && paper !== 'letter' && paper !== 'a4') return `--paper ${paper}: letter or a4`
  const units = given.get('--units') ?? null
  if (units !== null && units !== 'in' && units !== 'mm') return `--units ${units}: in or mm`
  const on = given.get('--date') ?? today.toISOString().slice(0, 10)
  if (!isDate(on)) return `--date ${on}: a date like 2026-03-14 is wanted`
  return { file, out, workshop: given.get('--workshop') ?? null, paper, units, on, prices }
}

const isDate = (words: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(words) &&
  !Number.isNaN(Date.parse(`${words}T00:00:00Z`)) &&
  new Date(`${words}T00:00:00Z`).toISOString().startsWith(words)
