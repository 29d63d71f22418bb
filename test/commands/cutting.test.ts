import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { runCutting } from '../../main/commands/cutting'

const folder = mkdtempSync(join(tmpdir(), 'cutting-'))
afterAll(() => rmSync(folder, { recursive: true }))

const run = async (text: string, ...more: string[]) => {
  const file = join(folder, 'instances.jsonl')
  writeFileSync(file, text)
  const out: string[] = []
  const err: string[] = []
  const code = await runCutting([file, ...more], { out: (line) => out.push(line), err: (line) => err.push(line) })
  return { code, out, err }
}

const BARS = '{"name":"two","stock":[{"length":2003}],"kerf":3,"demand":[{"length":1000,"qty":2}],"optimum":1}'

describe('the cutting command', () => {
  it('prints one line for each instance and counts what passed', async () => {
    const { code, out } = await run(`${BARS}\n${BARS.replace('2003', '2002').replace('"optimum":1', '"optimum":2')}\n`)
    expect(code).toBe(0)
    expect(out.map((line) => (line.startsWith('{') ? JSON.parse(line) : line))).toMatchObject([
      { name: 'two', bars: 1, cost: 2003, lowerBound: 2003, proven: true, valid: true },
      { name: 'two', bars: 2, cost: 4004, lowerBound: 4004, proven: true, valid: true },
      '2 passed, 0 failed'
    ])
  })

  it('fails an instance whose optimum is not met', async () => {
    const { code, out } = await run(BARS.replace('"optimum":1', '"optimum":3'))
    expect(code).toBe(1)
    expect(out.at(-1)).toBe('0 passed, 1 failed')
  })

  it('takes trim from new stock and none from counted stock', async () => {
    // 1000 + 3 + 1000 from 2003 less 10 does not go; the counted bar of 2003 loses nothing.
    const stock = '"stock":[{"length":2003,"cost":9},{"length":2003,"cost":5,"count":1}],"trim":10'
    const { out } = await run(BARS.replace('"stock":[{"length":2003}]', stock).replace('"optimum":1', '"optimum":5'))
    expect(JSON.parse(out[0] ?? '')).toMatchObject({ bars: 1, cost: 5, proven: true, valid: true })
  })

  it('names the line and the field of what it cannot use', async () => {
    expect(await run(BARS.replace('1000', '-4'))).toMatchObject({
      code: 2,
      out: [],
      err: [expect.stringMatching(/line 1: demand\[0\]\.length/)]
    })
    expect((await run('{')).err[0]).toMatch(/line 1: is not JSON/)
    expect((await run(BARS, '--limit', 'x')).err[0]).toMatch(/--limit/)
    const out: string[] = []
    expect(await runCutting([join(folder, 'none')], { out: () => {}, err: (line) => out.push(line) })).toBe(2)
    expect(out).toHaveLength(1)
  })

  it('refuses figures whose sums whole numbers do not hold, and says which field', async () => {
    const long = '{"stock":[{"length":9007199254740991}],"kerf":5,"demand":[{"length":9007199254740990,"qty":2}]}'
    expect(await run(long)).toMatchObject({ code: 2, out: [], err: [expect.stringMatching(/stock\[0\]\.length/)] })
    const many = '{"stock":[{"length":100}],"demand":[{"length":30,"qty":9007199254740991}]}'
    expect(await run(many)).toMatchObject({ code: 2, out: [], err: [expect.stringMatching(/demand: /)] })
    // 10⁶ bars of 10¹² each would cost 10¹⁸, more than 2⁵³.
    const dear = '{"stock":[{"length":1000000000000}],"demand":[{"length":900000000000,"qty":1000000}]}'
    expect(await run(dear)).toMatchObject({ code: 2, out: [], err: [expect.stringMatching(/stock\[0\]\.cost/)] })
  })

  it('cuts hundreds of millions of pieces', async () => {
    // Two pieces to a bar: 2 × (1500 + 3) ≤ 3003 + 3, and a third does not go; 4 × 10⁸ pieces need 2 × 10⁸ bars.
    const { out } = await run(
      '{"stock":[{"length":3003,"cost":1}],"kerf":3,"demand":[{"length":1500,"qty":400000000}]}'
    )
    expect(JSON.parse(out[0] ?? '')).toMatchObject({ bars: 200_000_000, proven: true, valid: true })
  })

  it('prints a line for pieces that no bar reaches', async () => {
    const { code, out } = await run('{"name":"x","stock":[{"length":100}],"demand":[{"length":101,"qty":1}]}')
    expect(code).toBe(1)
    expect(JSON.parse(out[0] ?? '')).toMatchObject({ name: 'x', proven: false, valid: false })
  })

  it('reads a file that begins with a byte order mark', async () => {
    expect((await run(`\uFEFF${BARS}\r\n`)).code).toBe(0)
  })
})
