import { describe, expect, it } from 'vitest'
import {
  CAUTIONS,
  type CautionFacts,
  type Condition,
  cautionFacts,
  cautionsFor,
  type FactValue,
  holds,
  stepsOf,
  withCautions
} from '../../shared-model/cautions'
import { DEMOS } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { SOURCES } from '../../shared-model/sources'

const demo = (k: number) => {
  const found = DEMOS[k]
  if (found === undefined) throw new Error('no demo')
  return found
}

/** Facts of a real build to vary from. */
const someFacts = (): CautionFacts => {
  const { design, workshop } = demo(0)
  const plan = evaluate(design, workshop, '2026-05-01', { cuts: 'left-out' })
  const [facts] = cautionFacts(design, workshop, {
    sillDepthMm: plan.sill.depthMm,
    channels: plan.channels,
    pieceLengthsMm: plan.pieces.map(({ lengthMm }) => lengthMm),
    billNeeds: plan.bill.lines
  })
  if (facts === undefined) throw new Error('no channel')
  return facts
}

type Leaf = Extract<Condition, { readonly fact: unknown }>

/** A value of the leaf's fact for which its comparison holds, and one for which it does not. */
const values = ({ op, value }: Leaf): { readonly yes: readonly FactValue[]; readonly no: readonly FactValue[] } => {
  const first = (Array.isArray(value) ? value[0] : value) as FactValue
  const other: FactValue = typeof first === 'boolean' ? !first : typeof first === 'number' ? first + 1 : `not ${first}`
  const number = typeof first === 'number' ? first : 0
  switch (op) {
    case '==':
    case 'in':
    case 'has':
    case 'hasAny':
      return { yes: [first], no: op === 'has' || op === 'hasAny' ? [] : [other] }
    case '!=':
      return { yes: [other], no: [first] }
    case '<':
      return { yes: [number - 0.001], no: [number] }
    case '<=':
      return { yes: [number], no: [number + 0.001] }
    case '>':
      return { yes: [number + 0.001], no: [number] }
    case '>=':
      return { yes: [number], no: [number - 0.001] }
  }
}

const leavesOf = (condition: Condition): readonly Leaf[] => {
  if ('all' in condition) return condition.all.flatMap(leavesOf)
  return 'any' in condition ? condition.any.flatMap(leavesOf) : [condition]
}

/** Facts that make every comparison of a condition hold, or none. */
const factsMaking = (condition: Condition, which: 'yes' | 'no', base: CautionFacts): CautionFacts => {
  const made: Record<string, readonly FactValue[]> = { ...base }
  for (const leaf of leavesOf(condition)) made[leaf.fact] = []
  for (const leaf of leavesOf(condition)) made[leaf.fact] = [...(made[leaf.fact] ?? []), ...values(leaf)[which]]
  return made as CautionFacts
}

describe('cautions', () => {
  const base = someFacts()

  it('are all there, each with a name of its own', () => {
    expect(CAUTIONS.length).toBe(57)
    expect(new Set(CAUTIONS.map(({ id }) => id)).size).toBe(57)
  })

  it.each(CAUTIONS.map(({ id, condition }) => [id, condition] as const))(
    '%s is printed when its condition holds and is not when it does not',
    (_, condition) => {
      expect(holds(condition, factsMaking(condition, 'yes', base))).toBe(true)
      expect(holds(condition, factsMaking(condition, 'no', base))).toBe(false)
    }
  )

  it.each(CAUTIONS.map((caution) => [caution.id, caution] as const))(
    '%s has its source in the register, or says common practice',
    (_, { sources, grade }) => {
      if (sources.length === 0) expect(grade).toBe('common-practice')
      for (const id of sources) expect(Object.hasOwn(SOURCES, id), id).toBe(true)
    }
  )

  it('count what is not known as the careful answer', () => {
    const holdsFor = (id: string, facts: Partial<CautionFacts>): boolean => {
      const caution = CAUTIONS.find((each) => each.id === id)
      if (caution === undefined) throw new Error(id)
      return holds(caution.condition, { ...base, ...facts })
    }
    expect(holdsFor('window-children', { childrenPresent: [true, false] })).toBe(true)
    expect(holdsFor('window-children', { childrenPresent: [false] })).toBe(false)
    // A press and a hand drill at the bench: both cautions belong.
    expect(holdsFor('holesaw-kickback', { drillPress: [true, false], holeSawMaxDiaIn: [2] })).toBe(true)
    expect(holdsFor('drill-press-guard', { drillPress: [true, false] })).toBe(true)
    expect(holdsFor('holesaw-kickback', { drillPress: [true], holeSawMaxDiaIn: [2] })).toBe(false)
  })

  it('look at one channel at a time: a long light one beside a short heavy one is not a long heavy one', () => {
    const ids = (facts: readonly CautionFacts[]): readonly string[] =>
      cautionsFor(facts, { heaviestFilledG: 0, sillLoadG: 0 }).map(({ id }) => id)
    const long = { ...base, channelLengthIn: [40], filledWeightLb: [5] }
    const heavy = { ...base, channelLengthIn: [12], filledWeightLb: [15] }
    expect(ids([long, heavy])).not.toContain('lift-slosh')
    expect(ids([long, { ...heavy, channelLengthIn: [40] }])).toContain('lift-slosh')
  })

  it('come by signal word, then by bench step', () => {
    const { design, workshop } = demo(1)
    const { cautions } = evaluate(design, workshop, '2026-05-01')
    const words = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE', 'SAFETY INSTRUCTIONS']
    const ranks = cautions.map(({ signalWord }) => words.indexOf(signalWord))
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    const ids = cautions.map(({ id }) => id)
    expect(ids.indexOf('drill-clamp')).toBeLessThan(ids.indexOf('solution-not-drinking'))
  })

  it('stand beside the steps they belong to, and never show gloves beside a rotating tool', () => {
    const { design, workshop } = demo(0)
    const { bench, cautions } = evaluate(design, workshop, '2026-05-01')
    const byId = new Map(cautions.map((caution) => [caution.id, caution]))
    const saw = bench.steps.find(({ kind }) => kind === 'saw')
    expect(saw?.cautionIds).toContain('drill-no-gloves')
    expect(bench.steps.find(({ kind }) => kind === 'fit-end')?.cautionIds).toContain('cement-fire')
    expect(bench.steps.find(({ kind }) => kind === 'leak-test')?.cautionIds).toContain('leak-test')
    const rotating = ['pilot', 'saw', 'score', 'saw-inner', 'saw-through', 'cut-collar-blank', 'bore-cup']
    for (const step of bench.steps.filter(({ kind }) => rotating.includes(kind)))
      for (const id of step.cautionIds) expect(byId.get(id)?.iso7010, `${step.kind} ${id}`).not.toContain('M009')
  })

  it('print the saw’s speed in bold above 1-1/4 in, and only then', () => {
    const bold = (inches: number): boolean | undefined =>
      cautionsFor([{ ...base, holeSawMaxDiaIn: [inches] }], { heaviestFilledG: 0, sillLoadG: 0 }).find(
        ({ id }) => id === 'holesaw-slow'
      )?.bold
    expect(bold(1.25)).toBe(false)
    expect(bold(1.3125)).toBe(true)
  })

  it('leave the steps of a build without cautions as they are', () => {
    const { design, workshop } = demo(0)
    const { steps } = evaluate(design, workshop, '2026-05-01').bench
    expect(withCautions(steps, []).every(({ cautionIds }) => cautionIds.length === 0)).toBe(true)
    expect(stepsOf({ id: 'sill-strength', category: 'place' })).toEqual([])
  })
})
