import { describe, expect, test } from 'vitest'
import { sectionOf } from '../../shared-model/profile'
import { concentrateDose, drawDown, emptyBasin, litresAtLevel, type Rung } from '../../shared-model/reservoir'
import { faceOf, seatFit } from '../../shared-model/seating'
import { litres, mm } from '../../shared-model/units'
import { build, CHANNEL, CUP, INDEX, must, SEAT, SILL, TUBE, WATER, withRiser } from '../reference/small-build'

const severities = (built: ReturnType<typeof build>): readonly string[] => built.waterFindings.map((f) => f.severity)
const rungFor = (fillShare: number, stage: Rung['stage']): Rung => {
  const rung = build({ ...CHANNEL, fillShare }).water.ladder.find((r) => r.stage === stage)
  if (!rung) throw new Error('the ladder has a rung for every stage')
  return rung
}

describe('what growers hold to be so (common practice, no source)', () => {
  test.each([0.5, 0.6, 0.75])(
    'plain 2 in cups, rooted, in a small channel filled to %s of its height: no stop',
    (fillShare) => {
      expect(severities(build({ ...CHANNEL, fillShare }))).not.toContain('stop')
    }
  )

  test('at 95 % without risers rooted plants give a warning', () => {
    const built = build({ ...CHANNEL, fillShare: 0.95 })
    expect(built.waterFindings).toContainEqual(expect.objectContaining({ code: 'gap-short', severity: 'warn' }))
  })

  test.each([0.95, 0.98])('at %s with the ladder’s risers there is nothing to warn of', (fillShare) => {
    const { how } = rungFor(fillShare, 'rooted')
    if (how.kind !== 'other-saw') throw new Error(`a rooted plant's lift needs another saw here, not ${how.kind}`)
    // Cut 3 mm further from the rim than where the body measures the opening: 2 + (56 - d) × 6.25 + 3.
    const cutMm = 2 + (56 - how.openingMm) * 6.25 + 3
    const built = build({ ...CHANNEL, fillShare }, SILL, WATER, withRiser(cutMm, how.openingMm))
    expect(built.seatFindings.filter((f) => f.severity !== 'note')).toEqual([])
    expect(built.waterFindings.filter((f) => f.severity !== 'note')).toEqual([])
    expect(built.water.leastGapMm).toBeGreaterThanOrEqual(25.4 - 0.05)
  })

  test('unrooted cuttings may start at 90 %: at most a note', () => {
    const built = build({ ...CHANNEL, fillShare: 0.9 }, SILL, { ...WATER, stage: 'unrooted' })
    expect(severities(built).every((severity) => severity === 'note')).toBe(true)
  })

  test('half-strength feed starts near EC 1.5', () => {
    // A feed of EC 3.0 at the label's dose on water of 0: half the dose gives 1.5.
    const dose = must(
      concentrateDose({ targetEcMsPerCm: 1.5, waterEcMsPerCm: 0, doseEcMsPerCm: 3, doseMlPerL: 4, litres: litres(10) })
    )
    expect(dose.share).toBeCloseTo(0.5, 12)
    expect(dose.ml).toBeCloseTo(20, 9)
  })

  test('a use of 40 % of the start volume over 19 days leaves 60 % on day 19', () => {
    const basin = emptyBasin(sectionOf(TUBE, false), 1000)
    const start = must(litresAtLevel(basin, mm(40)))
    const table = drawDown(basin, [], {
      levelMm: 40,
      litres: start,
      dailyMl: (start * 1000 * 0.4) / 19,
      endShare: 0.15
    })
    expect(table.days[19]?.litres).toBeCloseTo(start * 0.6, 9)
    expect(table.days[19]?.levelMm).toBeCloseTo(24, 3)
  })

  test('a flexible taper seat under the friction angle is held when turned over and seals when carried level', () => {
    const seats = { ...INDEX, cups: new Map([['cup', { ...CUP, flexible: true }]]) }
    const fit = must(seatFit(SEAT, faceOf(sectionOf(TUBE, false)), seats, 44))
    expect(fit.hold).toBe('wedges')
    expect(fit.interfaces[0]?.held).toBe(true)
    expect(fit.seals).toBe(true)
  })
})
