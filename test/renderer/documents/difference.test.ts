import { expect, test } from 'vitest'
import { designDifference } from '../../../renderer/documents/difference'
import { DEMOS } from '../../../shared-model/design'

const [demo] = DEMOS
const [channel] = demo?.design.channels ?? []
if (demo === undefined || channel === undefined) throw new Error('there is no demo with a channel')
const { design } = demo
const others = design.channels.slice(1)

test('two designs that are the same differ in nothing', () => {
  expect(designDifference(design, structuredClone(design))).toBe('')
})

test('what a later design has more, fewer or otherwise is named', () => {
  expect(designDifference(design, { ...design, channels: [{ ...channel, lengthMm: 1 }, ...others] })).toBe(
    '1 channel changed'
  )
  const fewer = { ...channel, sites: channel.sites.slice(1) }
  expect(designDifference(design, { ...design, channels: [fewer, ...others] })).toBe(
    '1 cup site fewer, 1 channel changed'
  )
  const second = { ...channel, id: 'more', sites: [] }
  expect(designDifference(design, { ...design, channels: [...design.channels, second] })).toBe('1 channel more')
  expect(designDifference(design, { ...design, title: 'Other', quantity: 99 })).toBe(
    'title changed, how many to make changed'
  )
})
