import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { DEMOS, documentJsonSchemas } from '../../shared-model/design'

const file = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../shared-model/design/${name}.schema.json`, import.meta.url), 'utf8'))

const readBack = (schema: object): z.ZodType => z.fromJSONSchema(JSON.parse(JSON.stringify(schema)))

describe.each(documentJsonSchemas())('the JSON Schema of a $name', ({ name, schema }) => {
  it('is the file that is kept: run `npm run schema` after a change of the parser', () => {
    expect(file(name)).toEqual(JSON.parse(JSON.stringify(schema)))
  })

  it('says what each field of the document is for', () => {
    const fields = Object.entries(schema.properties as Record<string, { description?: string }>)
    expect(fields.filter(([, { description }]) => description === undefined).map(([field]) => field)).toEqual([])
  })

  it('takes the demo documents and refuses what the parser refuses', () => {
    const parser = readBack(schema)
    for (const demo of DEMOS) {
      const document = name === 'design' ? demo.design : demo.workshop
      expect(parser.safeParse(document).success).toBe(true)
      for (const wrong of [{ ...document, title: 7 }, { ...document, schema: 2 }, { ...document, id: '../x' }, []])
        expect(parser.safeParse(wrong).success).toBe(false)
      const { id: _, ...nameless } = document
      expect(parser.safeParse(nameless).success).toBe(false)
    }
  })
})
