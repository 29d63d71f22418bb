import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { lineFor, runReference } from '../../main/commands/reference'
import { readChecks } from '../../main/commands/reference/check'

const path = new URL('../reference/checks.json', import.meta.url).pathname
const text = readFileSync(path, 'utf8')
const read = readChecks(text)
const checks = read.ok ? read.checks : []

describe('the published checks, each worked out by the function the program uses', () => {
  it('are all there', () => expect(checks.length).toBe(128))
  for (const check of checks) {
    it(`${check.id}: ${check.quantity}`, () => expect(lineFor(check)).toBe(`ok ${check.id}`))
  }
})

describe('the reference command', () => {
  it('prints one line a check, then the count, and says by its exit code that none failed', async () => {
    const lines: string[] = []
    const code = await runReference([path], { out: (line) => lines.push(line), err: () => undefined })
    expect(lines.at(-1)).toBe(`${checks.length} passed, 0 failed`)
    expect(lines.length).toBe(checks.length + 1)
    expect(code).toBe(0)
  })

  it('says which field got what where a value is off, and names a quantity it does not know', () => {
    const check = { id: 'x', inputs: { celsius: 20 }, expected: { kgPerL: 1 }, tolerance: { kgPerL: 1e-5 } }
    expect(lineFor({ ...check, quantity: 'water-density' })).toMatch(/^off x kgPerL 0\.99820\d+ 1$/)
    expect(lineFor({ ...check, quantity: 'water-colour' })).toBe('unknown x water-colour')
  })

  it('compares problems by their code and names a missing input', () => {
    const check = { id: 'x', quantity: 'water-density', tolerance: {} }
    expect(lineFor({ ...check, inputs: { celsius: 90 }, expected: { problem: 'out-of-range' } })).toBe('ok x')
    expect(lineFor({ ...check, inputs: {}, expected: { kgPerL: 1 } })).toBe(
      'off x problem inputs.celsius is not a number none'
    )
  })

  it('compares lists one by one and figures each within the one tolerance', () => {
    const split = { id: 'x', quantity: 'split-total', inputs: { weights: [1, 1], total: 3 }, tolerance: {} }
    expect(lineFor({ ...split, expected: { parts: [2, 1] } })).toBe('ok x')
    expect(lineFor({ ...split, expected: { parts: [1, 2] } })).toBe('off x parts [2,1] [1,2]')
    expect(lineFor({ ...split, expected: { parts: [2, 1, 0] } })).toBe('off x parts [2,1] [2,1,0]')
    // 2 mmol/L of Mg by its abridged atomic weight, 24.305: 48.61 ppm
    const ppm = { id: 'x', quantity: 'solution-ppm', inputs: { mmolPerL: { MgSO4: 2 } } }
    expect(lineFor({ ...ppm, expected: { ppm: { Mg: 48.6 } }, tolerance: { ppm: 0.05 } })).toBe('ok x')
    expect(lineFor({ ...ppm, expected: { ppm: { Mg: 48.6 } }, tolerance: { ppm: 0.005 } })).toMatch(/^off x ppm /)
    expect(lineFor({ ...ppm, expected: { ppm: { Mg: 48.6, Fe: 1 } }, tolerance: { ppm: 0.05 } })).toMatch(/^off x ppm /)
  })

  it('refuses a file that cannot be read or used with one line that names the field', async () => {
    const said: string[] = []
    const io = { out: () => undefined, err: (line: string) => said.push(line) }
    expect(await runReference([`${path}.missing`], io)).toBe(2)
    expect(await runReference([], io)).toBe(2)
    expect(said.length).toBe(2)
    expect(readChecks('{}')).toEqual({ ok: false, reason: 'not an array of checks' })
    expect(readChecks('[{"id":"a"}]')).toEqual({ ok: false, reason: '[0].quantity is not a text' })
  })
})
