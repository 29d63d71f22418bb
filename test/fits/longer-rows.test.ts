import { describe, expect, it } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { rowsThatFit } from '../../shared-model/fits'
import { everyChoice, rowBars } from '../../shared-model/fits/longer-rows'
import { stockForRows } from '../../shared-model/fits/stock-for-rows'

const [demo] = DEMOS
if (demo === undefined) throw new Error('there is a demo')

// Every price is different, and no sum of two is a third, so that other bars are another cost.
const offer = (priceMinor: number) => ({ priceMinor, supplier: '', pricedOn: '', taxInside: false })
const bar = (lengthMm: number, priceMinor: number) => ({
  id: String(lengthMm),
  profileId: 'p',
  lengthMm,
  count: null,
  offer: offer(priceMinor)
})
const workshop = {
  ...demo.workshop,
  stock: [bar(1000, 1009), bar(630, 701), bar(1500, 1433)],
  rack: [{ id: 'o', profileId: 'p', lengthMm: 417, worthMinor: 97, cameFrom: '', cameOn: '' }],
  cutting: { ...demo.workshop.cutting, kerfMm: 3, endTrimMm: 10, keepFromMm: 100_000, keptWorthPercent: 0 }
}

const wanted = {
  roomLengthMm: 720,
  roomDepthMm: 220,
  acrossMm: 100,
  rowGapMm: 20,
  leastEndMm: 55,
  pitchMm: 150,
  closuresAddMm: 12
}

const costOf = (lengthsMm: readonly number[]): number | null =>
  stockForRows(lengthsMm, {
    profileId: 'p',
    stock: workshop.stock,
    rack: workshop.rack,
    setup: workshop.cutting,
    stop: () => false
  })?.costMinor ?? null

/** Whole lengths from the shortest on at which one millimetre more is cut from other bars; found by trying each. */
function lastBeforeBarsChange(leastMm: number, mostMm: number, lengthsAt: (lengthMm: number) => readonly number[]) {
  const found: number[] = []
  for (let lengthMm = leastMm; lengthMm <= mostMm; lengthMm += 1) {
    if (costOf(lengthsAt(lengthMm)) !== costOf(lengthsAt(lengthMm + 1))) found.push(lengthMm)
  }
  return found
}

describe('rows made longer', () => {
  const rows = rowsThatFit(wanted)
  if (!rows.ok) throw new Error(rows.problem.code)
  const choices = [...everyChoice(rows.value, wanted, rowBars(workshop, 'p'))]
  const tried = new Set(choices.map((choice) => choice.map((row) => row.lengthMm.toFixed(3)).join(' ')))
  const key = (lengthsMm: readonly number[]): string =>
    lengthsMm
      .toSorted((a, b) => a - b)
      .map((each) => each.toFixed(3))
      .join(' ')
  // 2 × 55 + (n − 1) × 150; 720 − 12 of both closures leaves 708 for the cut length: four sites at most.
  const short = [110, 260, 410, 560]
  const roomMm = 708

  it('are tried at each whole length at which one row, two equal rows, or one beside another changes its bars', () => {
    const missed: string[] = []
    let changes = 0
    for (const leastMm of short) {
      const mostMm = Math.min(roomMm, leastMm + 149)
      const ways = [
        (lengthMm: number) => [lengthMm],
        (lengthMm: number) => [lengthMm, lengthMm],
        ...short.map((other) => (lengthMm: number) => [lengthMm, other])
      ]
      for (const way of ways) {
        for (const lengthMm of lastBeforeBarsChange(leastMm + 1, mostMm, way)) {
          changes += 1
          if (!tried.has(key(way(lengthMm)))) missed.push(key(way(lengthMm)))
        }
      }
    }
    expect(missed).toEqual([])
    expect(changes).toBeGreaterThan(10)
  })

  it('keep their number of sites, as far from the ends as asked and no nearer to each other', () => {
    for (const row of choices.flat()) {
      const { sitesAtMm, lengthMm } = row
      expect(sitesAtMm.length).toBe(1 + Math.floor((lengthMm - 2 * wanted.leastEndMm) / wanted.pitchMm + 1e-9))
      expect(sitesAtMm[0]).toBeGreaterThanOrEqual(wanted.leastEndMm)
      expect(lengthMm - (sitesAtMm.at(-1) ?? 0)).toBeGreaterThanOrEqual(wanted.leastEndMm - 1e-9)
      const gapsMm = sitesAtMm.slice(1).map((atMm, k) => atMm - (sitesAtMm[k] ?? 0))
      expect(Math.min(wanted.pitchMm, ...gapsMm)).toBeGreaterThanOrEqual(wanted.pitchMm - 1e-9)
      expect(lengthMm).toBeLessThanOrEqual(roomMm)
    }
  })

  it('are tried once each', () => {
    expect(tried.size).toBe(choices.length)
  })
})
