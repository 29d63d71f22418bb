import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  DEMOS,
  type Design,
  designFault,
  parseDesign,
  parseWorkshop,
  pinDimension,
  type Workshop,
  workshopFault
} from '../../shared-model/design'
import { anyDesign } from '../designs/arbitrary'

const [demo] = DEMOS
const first = demo?.design.channels[0]
if (demo === undefined || first === undefined) throw new Error('the demo is missing')
const { design, workshop } = demo

const fromFile = (value: object): unknown => JSON.parse(JSON.stringify(value))
const many = <T extends { readonly id: string }>(thing: T | undefined, count: number): T[] => {
  if (thing === undefined) throw new Error('the demo has none')
  return Array.from({ length: count }, (_, k) => ({ ...thing, id: `m${k}` }))
}

const SPOILT: Readonly<Record<string, Design>> = {
  'a dimension to a channel that is gone': pinDimension(
    design,
    { kind: 'channel', channelId: 'gone', end: 'datum' },
    { kind: 'sill', edge: 'left' }
  ),
  'a channel too many': { ...design, channels: many(first, 121) },
  'a site too many': { ...design, channels: [{ ...first, sites: many(first.sites[0], 401) }] },
  'a note too long': { ...design, notes: [{ id: 'n1', xMm: 1, yMm: 1, text: 'x'.repeat(2_001) }] },
  'no unit at all': { ...design, quantity: 0 },
  'a length that is no number': { ...design, channels: [{ ...first, lengthMm: Number.NaN }] },
  'a channel twice': { ...design, channels: [first, first] },
  'a seat that is not there': {
    ...design,
    channels: [{ ...first, sites: first.sites.map((site) => ({ ...site, seatId: 'none' })) }]
  }
}

describe('a design that could not be opened again', () => {
  it.each(Object.entries(SPOILT))('is known before it is written: %s', (_, spoilt) => {
    const read = parseDesign(fromFile(spoilt))
    expect(read.ok).toBe(false)
    // Known at the second look too, when its channels have passed.
    for (const fault of [designFault(spoilt), designFault(spoilt)]) {
      expect(read.ok ? [] : read.problem).toContainEqual(fault)
    }
  })

  it('is none that the parser takes: keys without a value are not in the file', () => {
    const emptyKey = { ...design }
    Reflect.set(emptyKey, 'atBench', undefined)
    expect(designFault(emptyKey)).toBeNull()
    fc.assert(
      fc.property(anyDesign, (any) => {
        expect(designFault(any)).toBeNull()
        expect(parseDesign(fromFile(any)).ok).toBe(true)
      }),
      { numRuns: 40, seed: 20_261_125 }
    )
  })
})

describe('a workshop that could not be opened again', () => {
  it('is known before it is written', () => {
    const crowded: Workshop = { ...workshop, drills: many(workshop.drills[0], 11) }
    const read = parseWorkshop(fromFile(crowded))
    expect(read.ok ? [] : read.problem).toContainEqual(workshopFault(crowded))
    expect(workshopFault(workshop)).toBeNull()
  })
})
