export interface PlanArguments {
  readonly file: string
  readonly workshop: string | null
  /** ISO date. */
  readonly on: string
}

const USAGE = 'plan FILE.json [--workshop FILE.json] [--date YYYY-MM-DD]'

/** The arguments read, or one line that says what is wrong. */
export const planArguments = (argv: readonly string[], today = new Date()): PlanArguments | string => {
  const given = new Map<string, string>()
  const files: string[] = []
  for (let at = 0; at < argv.length; at += 1) {
    const word = argv[at] ?? ''
    if (word === '--workshop' || word === '--date') {
      const value = argv[at + 1]
      if (value === undefined || value === '' || value.startsWith('--')) return `${word}: a value is wanted. ${USAGE}`
      given.set(word, value)
      at += 1
    } else if (word.startsWith('--')) return `${word}: there is no such option. ${USAGE}`
    else files.push(word)
  }
  const [file, more] = files
  if (file === undefined || file === '') return `FILE.json: a design file is wanted. ${USAGE}`
  if (more !== undefined) return `${more}: one design file at a time. ${USAGE}`
  const on = given.get('--date') ?? today.toISOString().slice(0, 10)
  if (!isDay(on)) return `--date ${on}: a day like 2026-03-14 is wanted`
  return { file, workshop: given.get('--workshop') ?? null, on }
}

const isDay = (text: string): boolean => {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  const day = new Date(`${text}T00:00:00Z`)
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text)
}
