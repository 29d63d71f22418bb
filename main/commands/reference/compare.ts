import type { Answer, AnswerValue } from './answer'
import { type Check, isFields } from './check'

/** Null where every expected field is met within its tolerance, else `field got expected` of the first that is not. */
export function compare(answer: Answer, check: Pick<Check, 'expected' | 'tolerance'>): string | null {
  const { problem } = answer
  if (problem !== undefined && check.expected.problem === undefined) return `problem ${show(problem)} none`
  for (const [field, expected] of Object.entries(check.expected)) {
    const slack = check.tolerance[field]
    const got = Object.hasOwn(answer, field) ? answer[field] : undefined
    if (!meets(got, expected, typeof slack === 'number' ? slack : 0)) return `${field} ${show(got)} ${show(expected)}`
  }
  return null
}

/** Only the last bits of a double: what a unit conversion there and back may move. */
const LAST_BITS = 1e-12

function meets(got: AnswerValue | undefined, expected: unknown, slack: number): boolean {
  if (typeof expected === 'number') {
    return typeof got === 'number' && Math.abs(got - expected) <= slack + LAST_BITS * Math.max(1, Math.abs(expected))
  }
  if (Array.isArray(expected)) {
    return (
      Array.isArray(got) && got.length === expected.length && expected.every((each, i) => meets(got[i], each, slack))
    )
  }
  if (isFields(expected)) {
    if (!isFields(got)) return false
    return Object.entries(expected).every(([name, each]) => {
      const value = got[name]
      return typeof value === 'number' && meets(value, each, slack)
    })
  }
  return got === expected
}

const show = (value: unknown): string => (typeof value === 'string' ? value : (JSON.stringify(value) ?? 'nothing'))
