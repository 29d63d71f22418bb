import { describe, expect, it } from 'vitest'
import { CROPS, checkCrop, crop } from '../../shared-model/crops'
import { source } from '../../shared-model/sources'

describe('crops', () => {
  it('has the conductivity and acidity of HLA-6722, Table 2 (as reprinted)', () => {
    const table: readonly (readonly [string, number, number, number, number])[] = [
      ['basil', 1, 1.6, 5.5, 6],
      ['lettuce', 1.2, 1.8, 6, 7],
      ['parsley', 1.8, 2.2, 6, 6.5],
      ['spinach', 1.8, 2.3, 6, 7],
      ['strawberry', 1.8, 2.2, 6, 6],
      ['sage', 1, 1.6, 5.5, 6.5],
      ['pak-choi', 1.5, 2, 7, 7]
    ]
    for (const [id, ecLeast, ecMost, phLeast, phMost] of table) {
      expect(crop(id)?.ecMsPerCm, id).toEqual({ least: ecLeast, most: ecMost })
      expect(crop(id)?.ph, id).toEqual({ least: phLeast, most: phMost })
    }
  })

  it('has the spacing of FAO 589, Appendix 1 (as reprinted): basil 15-25, parsley 15-30, lettuce 18-30 cm', () => {
    expect(crop('basil')?.pitchMm).toEqual({ least: 150, most: 250 })
    expect(crop('parsley')?.pitchMm).toEqual({ least: 150, most: 300 })
    expect(crop('lettuce')?.pitchMm).toEqual({ least: 180, most: 300 })
  })

  it('shows where sources conflict, and leaves empty what was not found', () => {
    expect(crop('lettuce')?.conflicts.join(' ')).toContain('26 % less')
    expect(crop('strawberry')?.conflicts.join(' ')).toContain('about 1.0')
    expect(crop('strawberry')?.pitchMm).toBeNull()
    expect(crop('no-such-crop')).toBeUndefined()
  })

  it('gives every figure a grade and a source of the register', () => {
    for (const { id, evidence } of CROPS) {
      for (const [field, each] of Object.entries(evidence)) expect(source(each.source), `${id}.${field}`).toBeDefined()
    }
  })

  it('asks a full head of lettuce for 4 L to start with and small greens for 2.4 L', () => {
    expect(crop('lettuce')?.startLitres).toBe(4)
    expect(crop('basil')?.startLitres).toBe(2.4)
  })

  it('holds crops that can be, and names a figure that cannot with both bounds', () => {
    expect(CROPS.flatMap(checkCrop)).toEqual([])
    const basil = crop('basil')
    if (basil === undefined) throw new Error('no basil')
    expect(checkCrop({ ...basil, ecMsPerCm: { least: 1, most: 40 } })).toMatchObject([
      { code: 'crop-figure-outside', figures: { figure: 'ecMsPerCm', value: 40, least: 1, most: 10 } }
    ])
    expect(checkCrop({ ...basil, canopyMm: Number.NaN })).toMatchObject([{ code: 'crop-figure-outside' }])
  })
})
