import { describe, expect, it } from 'vitest'
import { walked } from '../../../renderer/board/walk'
import { chooseChannel, choosePinned, chooseSite, NOTHING } from '../../../renderer/store/selection'
import { DEMOS } from '../../../shared-model/design'

const channels = DEMOS[0]?.design.channels ?? []
const design = {
  channels,
  dimensions: [{ id: 'd1', from: { kind: 'sill', edge: 'left' }, to: { kind: 'sill', edge: 'right' } }],
  notes: [{ id: 'n1', xMm: 10, yMm: 20, text: 'Tap' }]
} as const

describe('walking the board by key', () => {
  it('meets every channel, site, opening and pinned thing once, then leaves the board', () => {
    const stops: string[] = []
    let selection = NOTHING
    for (;;) {
      const next = walked(design, selection, 1)
      if (next === null) break
      selection = next.selection
      stops.push(JSON.stringify(selection))
      expect(stops.length).toBeLessThan(500)
    }
    const sites = channels.reduce((sum, channel) => sum + channel.sites.length, 0)
    const openings = channels.reduce((sum, channel) => sum + channel.openings.length, 0)
    expect(openings).toBeGreaterThan(0)
    expect(stops).toHaveLength(channels.length + sites + openings + 2)
    expect(selection).toEqual(choosePinned('n1'))
    expect(new Set(stops).size).toBe(stops.length)
  })

  it('goes back the way it came', () => {
    const [first] = channels
    const site = [...(first?.sites ?? [])].sort((a, b) => a.atMm - b.atMm)[0]
    expect(first === undefined || site === undefined).toBe(false)
    if (first === undefined || site === undefined) return
    expect(walked(design, chooseSite(first.id, site.id), -1)?.selection).toEqual(chooseChannel(first.id))
    expect(walked(design, chooseChannel(first.id), -1)).toBeNull()
  })
})
