import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const sheet = readFileSync(new URL('../../../renderer/styles/tokens.css', import.meta.url), 'utf8')

/** Each set of colours in the order of the sheet: light, dark by the system, dark by choice. */
const sets = [...sheet.matchAll(/--board-room: (#[0-9a-f]{6});[\s\S]*?--board-warn: #[0-9a-f]{6};/g)].map(([block]) =>
  Object.fromEntries([...block.matchAll(/--board-([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name, hex]) => [name, hex]))
)

/** WCAG 2.2, "relative luminance" and "contrast ratio". */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a)
  return (light + 0.05) / (dark + 0.05)
}

const LINES = ['sill-edge', 'channel-edge', 'rim', 'canopy', 'dimension', 'mass', 'select', 'snap', 'stop', 'warn']
const GROUNDS = ['room', 'sill']

describe.each([
  ['in light colours', 0],
  ['in dark colours by the system', 1],
  ['in dark colours by choice', 2]
])('the board %s', (_, at) => {
  const ink = sets[at] ?? {}
  const weak = (names: readonly string[], least: number): readonly string[] =>
    names.flatMap((name) =>
      GROUNDS.flatMap((ground) => {
        const ratio = contrast(ink[name] ?? '#000000', ink[ground] ?? '#000000')
        return ratio < least ? [`${name} on ${ground}: ${ratio.toFixed(2)}`] : []
      })
    )

  it('draws its lines at 3:1 against the sill and the room at the least (WCAG 2.2, 1.4.11)', () => {
    expect(weak(LINES, 3)).toEqual([])
  })

  it('writes its figures at 4.5:1 at the least (WCAG 2.2, 1.4.3)', () => {
    expect(weak(['text', 'dimension'], 4.5)).toEqual([])
  })
})
