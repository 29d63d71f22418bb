import { expect, test } from 'vitest'
import { keptBefore } from '../../../renderer/host/written-before'

/** A file as the browser gives it, and what was kept and given out of it. */
async function before(name: string, there: string, text: string) {
  const kept: unknown[] = []
  const given: unknown[] = []
  const answer = await keptBefore(
    { name, getFile: async () => new File([there], name) },
    text,
    {
      put: async (key, value) => {
        kept.push([key.split(':').slice(0, 2).join(':'), value])
      }
    },
    async (...words) => {
      given.push(words)
    }
  )
  return { answer, kept, given }
}

test('a file of an older schema is kept in the browser and given out before it is written over', async () => {
  expect(await before('sill.design.json', '{"schema":1}', '{"schema":2}')).toEqual({
    answer: { original: 'sill.design.schema-1.json' },
    kept: [['original:sill.design.schema-1.json', '{"schema":1}']],
    given: [['sill.design.schema-1.json', 'application/json', '{"schema":1}']]
  })
})

test('a file of a newer schema is not to be written over', async () => {
  expect(await before('sill.json', '{"schema":3}', '{"schema":2}')).toEqual({ answer: 'newer', kept: [], given: [] })
})

test('a new file, one of this schema and one that is no document need no copy', async () => {
  for (const there of ['', '{"schema":2}', 'notes', '{"schema":"2"}'])
    expect(await before('sill.json', there, '{"schema":2}')).toEqual({ answer: null, kept: [], given: [] })
})
