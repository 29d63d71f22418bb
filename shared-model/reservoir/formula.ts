import { failed, ok, type Result } from '../outcome'
import { ATOMIC_WEIGHTS } from './atomic-weights'
import type { ReservoirProblem } from './codes'

/**
 * Atoms of each element in a salt's formula, such as `Ca(NO3)2` or `MgSO4.7H2O`. Fails, naming the formula, when it cannot
 * be read or has an element that is not in the table.
 */
export function atomsOf(formula: string): Result<Readonly<Record<string, number>>, ReservoirProblem> {
  const total = new Map<string, number>()
  for (const part of formula.trim().split(/[.·*]/)) {
    const lead = /^\s*(\d*)(.*?)\s*$/.exec(part)
    const times = lead?.[1] ? Number(lead[1]) : 1
    const atoms = group(lead?.[2] ?? '')
    if (!atoms || times === 0) return failed({ code: 'unknown-formula', figures: { formula } })
    for (const [element, count] of atoms) total.set(element, (total.get(element) ?? 0) + count * times)
  }
  return ok(Object.fromEntries(total))
}

function group(text: string): ReadonlyMap<string, number> | null {
  const stack: Map<string, number>[] = [new Map()]
  const token = /([A-Z][a-z]?)(\d*)|(\()|(\))(\d*)/y
  let at = 0
  while (at < text.length) {
    token.lastIndex = at
    const found = token.exec(text)
    const top = stack.at(-1)
    if (!found || !top) return null
    at = token.lastIndex
    const [, element, count, opens, , times] = found
    if (element) {
      if (ATOMIC_WEIGHTS[element] === undefined) return null
      top.set(element, (top.get(element) ?? 0) + (count ? Number(count) : 1))
    } else if (opens) {
      stack.push(new Map())
    } else {
      stack.pop()
      const under = stack.at(-1)
      if (!under) return null
      const by = times ? Number(times) : 1
      for (const [name, n] of top) under.set(name, (under.get(name) ?? 0) + n * by)
    }
  }
  const [only] = stack
  return stack.length === 1 && only && only.size > 0 ? only : null
}
