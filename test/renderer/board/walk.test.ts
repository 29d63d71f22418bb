import { describe, expect, it } from 'vitest'
import { walked } from '../../../renderer/board/walk'
import { chooseChannel, chooseSite, NOTHING } from '../../../renderer/store/selection'
import { DEMOS } from '../../../shared-model/design'

const channels = DEMOS[0]?.design.channels ?? []

describe('walking the board by key', () => {
  it('meets every channel and every site once, then leaves the board', () => {
    const stops: string[] = []
    let selection = NOTHING
    for (;;) {
      const next = walked(channels, selection, 1)
      if (next === null) break
      selection = next.selection
      stops.push(`${selection.channelIds[0]}/${selection.siteIds[0] ?? ''}`)
      expect(stops.length).toBeLessThan(500)
    }
    const sites = channels.reduce((sum, channel) => sum + channel.sites.length, 0)
    expect(stops).toHaveLength(channels.length + sites)
    expect(new Set(stops).size).toBe(stops.length)
  })

  it('goes back the way it came', () => {
    const [first] = channels
    const site = [...(first?.sites ?? [])].sort((a, b) => a.atMm - b.atMm)[0]
    expect(first === undefined || site === undefined).toBe(false)
    if (first === undefined || site === undefined) return
    expect(walked(channels, chooseSite(first.id, site.id), -1)?.selection).toEqual(chooseChannel(first.id))
    expect(walked(channels, chooseChannel(first.id), -1)).toBeNull()
  })
})
