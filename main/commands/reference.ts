import { readDocument } from '../files/read-document'
import type { Check } from './reference/check'
import { readChecks } from './reference/check'
import { compare } from './reference/compare'
import { QUANTITIES } from './reference/quantities'

export interface CommandIo {
  out(line: string): void
  err(line: string): void
}

/**
 * Works published values out with the program's own functions and compares: `reference FILE.json`.
 * Exit code 0: every check passed; 1: some did not; 2: the file cannot be read or used.
 */
export async function runReference(argv: readonly string[], io: CommandIo): Promise<number> {
  const [path] = argv
  if (path === undefined || path === '') return refuse(io, 'reference: FILE.json is missing')
  const document = await readDocument(path)
  if (!document.ok)
    return refuse(io, `reference: ${path} cannot be read: ${document.problem.code.replaceAll('-', ' ')}`)
  const checks = readChecks(document.value.text)
  if (!checks.ok) return refuse(io, `reference: ${path}: ${checks.reason}`)
  const lines = checks.checks.map(lineFor)
  for (const line of lines) io.out(line)
  const passed = lines.filter((line) => line.startsWith('ok ')).length
  io.out(`${passed} passed, ${lines.length - passed} failed`)
  return passed === lines.length ? 0 : 1
}

/** One check's line: `ok ID`, `off ID field got expected` or `unknown ID quantity`. */
export function lineFor(check: Check): string {
  const work = Object.hasOwn(QUANTITIES, check.quantity) ? QUANTITIES[check.quantity] : undefined
  if (work === undefined) return `unknown ${check.id} ${check.quantity}`
  const answer = work(check.inputs)
  const difference = compare(answer, check)
  return difference === null ? `ok ${check.id}` : `off ${check.id} ${difference}`
}

function refuse(io: CommandIo, line: string): number {
  io.err(line)
  return 2
}
