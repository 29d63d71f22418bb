import { type Fields, isFields } from './check'

export type AnswerValue = number | string | boolean | readonly number[] | Readonly<Record<string, number>>

/** What a quantity comes to, field by field; a problem stands as its code under `problem`. */
export type Answer = Readonly<Record<string, AnswerValue>>

export type Work = (inputs: Fields) => Answer

/** An input that the check should have and has not. */
export class InputMissing extends Error {}

/** A number among the inputs; one left out has the value given, or there is no answer. */
export function number(inputs: Fields, key: string, otherwise?: number): number {
  const value = inputs[key] ?? otherwise
  if (typeof value !== 'number' || !Number.isFinite(value)) throw new InputMissing(`inputs.${key} is not a number`)
  return value
}

export function text(inputs: Fields, key: string, otherwise?: string): string {
  const value = inputs[key] ?? otherwise
  if (typeof value !== 'string') throw new InputMissing(`inputs.${key} is not a text`)
  return value
}

export function numbers(inputs: Fields, key: string): readonly number[] {
  const value = inputs[key]
  if (!Array.isArray(value) || !value.every((each) => typeof each === 'number' && Number.isFinite(each))) {
    throw new InputMissing(`inputs.${key} is not a list of numbers`)
  }
  return value
}

export function figures(inputs: Fields, key: string): Readonly<Record<string, number>> {
  const value = inputs[key] ?? {}
  if (!isFields(value)) throw new InputMissing(`inputs.${key} is not an object`)
  return Object.fromEntries(Object.keys(value).map((name) => [name, number(value, name)]))
}

/** A decimal as it was typed: a number or a text. */
export function decimal(inputs: Fields, key: string, otherwise?: number): number | string {
  const value = inputs[key]
  return typeof value === 'string' && /^[+-]?(\d+\.?\d*|\.\d+)$/.test(value) ? value : number(inputs, key, otherwise)
}

interface Failed {
  readonly ok: false
  readonly problem: { readonly code: string }
}

/** The answer of a function that can refuse: its value's fields, or the code of its problem. */
export const answer = <T>(
  result: { readonly ok: true; readonly value: T } | Failed,
  fields: (value: T) => Answer
): Answer => (result.ok ? fields(result.value) : { problem: result.problem.code })
