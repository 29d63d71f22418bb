import type { BenchChannel, BenchHole, BenchInput, StepTimes } from '../../shared-model/bench'
import type { HoleSaw } from '../../shared-model/parts'

/** Round figures, so that sums can be worked by hand. */
export const TIMES: StepTimes = {
  setUpS: 600,
  markPerPieceS: 20,
  cutPerPieceS: 30,
  stopSettingS: 40,
  deburrPerEndS: 10,
  markPerHoleS: 5,
  pilotPerHoleS: 4,
  sawPerHoleS: 20,
  sawPerInchS: 10,
  toolChangeS: 60,
  mountS: 15,
  collarS: 30,
  boreCupS: 12,
  cutRiserS: 25,
  washPerChannelS: 50,
  jointS: 90,
  leakTestPerChannelS: 45,
  labelPerChannelS: 15,
  packPerUnitS: 120,
  cureWaitS: 86_400,
  leakWaitS: 3600
}

export const saw = (diameterMm: number): HoleSaw => ({
  id: `saw-${diameterMm}`,
  name: `${diameterMm} mm saw`,
  diameterMm,
  kerfMm: 2,
  depthMm: 38,
  oversizeMm: 0,
  evidence: {}
})

export const hole = (id: string, atMm: number, diameterMm: number, more: Partial<BenchHole> = {}): BenchHole => ({
  id,
  kind: 'site',
  face: 'top',
  atMm,
  heightMm: null,
  diameterMm,
  sawId: `saw-${diameterMm}`,
  alsoSawIds: [],
  sits: 'net cup',
  fitting: null,
  ...more
})

export const channel = (
  channelId: string,
  holes: readonly BenchHole[],
  more: Partial<BenchChannel> = {}
): BenchChannel => ({
  channelId,
  mark: channelId,
  material: 'pvc',
  shape: 'rectangle',
  wallMm: 2,
  lengthMm: 900,
  holes,
  closures: [
    { end: 'datum', closureId: 'cap', name: 'cap', joint: 'silicone-neutral' },
    { end: 'far', closureId: 'cap', name: 'cap', joint: 'silicone-neutral' }
  ],
  ...more
})

export const input = (more: Partial<BenchInput> = {}): BenchInput => {
  const channels = more.channels ?? [channel('c1', [hole('a', 100, 51), hole('b', 250, 51), hole('o', 400, 25)])]
  const quantity = more.quantity ?? 1
  return {
    quantity,
    channels,
    pieces: channels.flatMap(({ channelId, lengthMm }) =>
      Array.from({ length: quantity }, (_, unit) => ({
        id: `${channelId}-${unit + 1}`,
        mark: `${channelId}/${unit + 1}`,
        channelId,
        lengthMm
      }))
    ),
    stopSettingsMm: [],
    collars: [],
    collarSheets: 0,
    risers: [],
    saws: [25, 38, 51, 64, 76, 102].map(saw),
    drills: [{ id: 'drill', name: 'drill', kind: 'hand' }],
    times: TIMES,
    cutting: { tool: 'hand_saw', toolName: 'hand saw' },
    pilotMm: null,
    graduationMm: 1.5875,
    ...more
  }
}
