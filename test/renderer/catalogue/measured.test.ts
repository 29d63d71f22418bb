import { expect, test } from 'vitest'
import { addPartFrom, measurePart, renamePart } from '../../../renderer/catalogue/measured'
import type { Pair } from '../../../renderer/store/history'
import { DEMOS } from '../../../shared-model/design'
import { evaluate } from '../../../shared-model/plan'

const ON = '2025-05-01'
const demo = (): Pair => {
  const [first] = DEMOS
  if (first === undefined) throw new Error('there is no demo')
  return { design: first.design, workshop: first.workshop }
}
const unmeasured = ({ design, workshop }: Pair): readonly (string | undefined)[] =>
  evaluate(design, workshop, ON, { cuts: 'left-out' })
    .findings.filter(({ code }) => code === 'part-unmeasured')
    .map(({ where }) => where.partId)

test('a caliper reading is kept as measured on its day, in the design and in the workshop', () => {
  const pair = demo()
  const cup = pair.design.parts.cups[0]
  if (cup === undefined) throw new Error('the demo has no cup')
  const wider = cup.rimOutsideMm + 1
  const made = measurePart(pair, { shelf: 'cups', id: cup.id, figures: { rimOutsideMm: wider }, on: ON })
  if (!made.ok) throw new Error(made.problem.code)
  const now = made.value.design.parts.cups.find(({ id }) => id === cup.id)
  expect(now?.rimOutsideMm).toBe(wider)
  expect(now?.evidence.rimOutsideMm).toEqual({ grade: 'measured', source: 'user', on: ON })
  expect(now?.evidence.heightMm).toEqual(cup.evidence.heightMm)
  expect(made.value.workshop.parts.cups).toContainEqual(now)
})

test('the note that asks for measures goes when every asked figure of the part is measured', () => {
  let pair = demo()
  for (const { id, evidence, ...cup } of pair.design.parts.cups) {
    const figures = Object.fromEntries(
      Object.entries(cup).filter((entry): entry is [string, number] => typeof entry[1] === 'number')
    )
    expect(unmeasured(pair)).toContain(id)
    expect(Object.keys(evidence).every((field) => field in figures)).toBe(true)
    const made = measurePart(pair, { shelf: 'cups', id, figures, on: ON })
    if (!made.ok) throw new Error(made.problem.code)
    pair = made.value
    expect(unmeasured(pair)).not.toContain(id)
  }
})

test('a reading that no cup can have is refused with its field, and nothing changes', () => {
  const pair = demo()
  const id = pair.design.parts.cups[0]?.id ?? ''
  const made = measurePart(pair, { shelf: 'cups', id, figures: { heightMm: 9_000 }, on: ON })
  expect(made).toMatchObject({ ok: false, problem: { where: { field: `parts.cups.${id}.heightMm` } } })
})

test('a part of one’s own starts as a copy under a new id and a new name, and can be renamed', () => {
  const pair = demo()
  const profile = pair.design.parts.profiles[0]
  if (profile === undefined) throw new Error('the demo has no profile')
  const made = addPartFrom(pair, 'profiles', profile, 'Gutter from the shed')
  if (!made.ok) throw new Error(made.problem.code)
  const own = made.value.design.parts.profiles.at(-1)
  expect(own).toEqual({ ...profile, id: own?.id, name: 'Gutter from the shed' })
  expect(own?.id).not.toBe(profile.id)
  const renamed = renamePart(made.value, 'profiles', own?.id ?? '', 'Shed gutter')
  expect(renamed.ok && renamed.value.workshop.parts.profiles.at(-1)?.name).toBe('Shed gutter')
})
