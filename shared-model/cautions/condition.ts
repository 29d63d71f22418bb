import type { CautionFacts, FactName, FactValue } from './facts'

/** When a caution holds, over named facts. There is no "not": more possible values never take a caution away. */
export type Condition =
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly fact: FactName; readonly op: Comparison; readonly value: FactValue | readonly FactValue[] }

type Comparison = '==' | '!=' | '<' | '<=' | '>' | '>=' | 'in' | 'has' | 'hasAny'

/**
 * Whether a condition holds. A fact is the list of the values it may have: one where it is known, several where it is not;
 * a comparison holds when any of them would make it hold, so that not knowing counts as the careful answer.
 */
export const holds = (condition: Condition, facts: CautionFacts): boolean => {
  if ('all' in condition) {
    for (const each of condition.all) if (!holds(each, facts)) return false
    return true
  }
  if ('any' in condition) {
    for (const each of condition.any) if (holds(each, facts)) return true
    return false
  }
  for (const value of facts[condition.fact]) if (compares(value, condition.op, condition.value)) return true
  return false
}

const compares = (value: FactValue, op: Comparison, wanted: FactValue | readonly FactValue[]): boolean => {
  switch (op) {
    case '==':
    case 'has':
    case 'in':
    case 'hasAny':
      return isAmong(value, wanted)
    case '!=':
      return !isAmong(value, wanted)
    default:
      return typeof value === 'number' && typeof wanted === 'number' && inOrder(value, op, wanted)
  }
}

const isAmong = (value: FactValue, wanted: FactValue | readonly FactValue[]): boolean =>
  typeof wanted === 'object' ? wanted.includes(value) : value === wanted

const inOrder = (value: number, op: '<' | '<=' | '>' | '>=', wanted: number): boolean => {
  switch (op) {
    case '<':
      return value < wanted
    case '<=':
      return value <= wanted
    case '>':
      return value > wanted
    case '>=':
      return value >= wanted
  }
}
