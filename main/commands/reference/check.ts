/** One published check, as the file holds it. */
export interface Check {
  readonly id: string
  readonly quantity: string
  readonly inputs: Fields
  readonly expected: Fields
  readonly tolerance: Fields
}

export type Fields = Readonly<Record<string, unknown>>

export type ChecksRead =
  | { readonly ok: true; readonly checks: readonly Check[] }
  | { readonly ok: false; readonly reason: string }

/** The file's checks, or the field that makes it unusable. */
export function readChecks(text: string): ChecksRead {
  let parsed: unknown
  try {
    parsed = JSON.parse(text)
  } catch {
    return { ok: false, reason: 'not JSON' }
  }
  if (!Array.isArray(parsed)) return { ok: false, reason: 'not an array of checks' }
  const checks: Check[] = []
  for (const [index, entry] of parsed.entries()) {
    const check = readCheck(entry)
    if (typeof check === 'string') return { ok: false, reason: `[${index}].${check}` }
    checks.push(check)
  }
  return { ok: true, checks }
}

/** The check, or the name of the field that is wrong. */
function readCheck(entry: unknown): Check | string {
  if (!isFields(entry)) return 'is not an object'
  const { id, quantity, inputs, expected, tolerance } = entry
  if (typeof id !== 'string' || id === '') return 'id is not a text'
  if (typeof quantity !== 'string' || quantity === '') return 'quantity is not a text'
  if (!isFields(inputs)) return 'inputs is not an object'
  if (!isFields(expected)) return 'expected is not an object'
  const slack = tolerance ?? {}
  return isFields(slack) ? { id, quantity, inputs, expected, tolerance: slack } : 'tolerance is not an object'
}

export const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
