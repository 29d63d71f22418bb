import type { BenchInput } from './bench-input'
import type { BenchStep, OperationKind } from './bench-plan'

/** Marking, cutting to length, deburring and marking out, before the drill is taken up. */
export const stepsBeforeDrilling = (input: BenchInput): readonly BenchStep[] => {
  const { pieces, times } = input
  const holes = input.channels.reduce(
    (sum, channel) => sum + channel.holes.length * (channel.toDrill ?? input.quantity),
    0
  )
  const circles = input.collars.reduce((sum, { fromSheet }) => sum + fromSheet, 0)
  const cuts = cutSteps(input)
  const ids = pieces.map(({ id }) => id)
  const steps: BenchStep[] = []
  if (pieces.length > 0) {
    const runS = pieces.length * times.markPerPieceS
    steps.push(byHand('mark', 'mark', [], { setUpS: times.setUpS, runS, count: pieces.length, serves: ids }))
    steps.push(...cuts)
    steps.push(
      byHand(
        'deburr',
        'deburr',
        cuts.map(({ id }) => id),
        { runS: 2 * pieces.length * times.deburrPerEndS, count: 2 * pieces.length, serves: ids }
      )
    )
  }
  if (holes > 0) {
    const serves = input.channels
      .filter(({ holes: each, toDrill }) => each.length > 0 && toDrill !== 0)
      .map(({ channelId }) => channelId)
    const needs = pieces.length > 0 ? ['deburr'] : []
    steps.push(byHand('mark-holes', 'mark-holes', needs, { runS: holes * times.markPerHoleS, count: holes, serves }))
  }
  if (circles > 0) {
    const serves = input.collars.filter(({ fromSheet }) => fromSheet > 0).map(({ needId }) => needId)
    const figures = { about: 'sheet', sheets: input.collarSheets }
    steps.push(
      byHand('mark-sheets', 'mark-holes', [], { runS: circles * times.markPerHoleS, count: circles, serves, figures })
    )
  }
  return steps
}

/** Risers cut, then washing, fitting, curing, the leak test, labels and packing. */
export const stepsAfterDrilling = (input: BenchInput, drilled: readonly BenchStep[]): readonly BenchStep[] => {
  const { times, quantity } = input
  const channels = input.channels.length * quantity
  const risers = input.risers.flatMap((riser, i): BenchStep[] => {
    if (riser.opened.by !== 'cut' || riser.count === 0) return []
    const figures = { belowRimMm: riser.opened.belowRimMm, name: riser.name }
    const runS = riser.count * times.cutRiserS
    return [byHand(`cut-riser-${i + 1}`, 'cut-riser', [], { runS, count: riser.count, serves: [riser.id], figures })]
  })
  if (channels === 0) return risers
  const all = input.channels.map(({ channelId }) => channelId)
  const washed = [
    ...(input.pieces.length > 0 ? ['deburr'] : []),
    ...drilled.filter(({ figures }) => figures.about === 'channel').map(({ id }) => id)
  ]
  const wash = byHand('wash', 'wash', washed, { runS: channels * times.washPerChannelS, count: channels, serves: all })
  const fitted = [...endSteps(input), ...openingSteps(input)]
  const after = fitted.length > 0 ? fitted.map(({ id }) => id) : ['wash']
  const cures = input.channels.some(({ closures }) => closures.some(({ joint }) => needsCure(joint)))
  const cure: BenchStep[] =
    cures && times.cureWaitS > 0
      ? [
          {
            ...byHand('cure', 'cure', after, { count: channels, serves: all }),
            machine: 'wait',
            waitS: times.cureWaitS
          }
        ]
      : []
  const leak: BenchStep = {
    ...byHand('leak-test', 'leak-test', cure.length > 0 ? ['cure'] : after, {
      runS: channels * times.leakTestPerChannelS,
      count: channels,
      serves: all
    }),
    waitS: times.leakWaitS
  }
  const label = byHand('label', 'label', ['leak-test'], {
    runS: channels * times.labelPerChannelS,
    count: channels,
    serves: all
  })
  const rest = [...risers, ...drilled.filter(({ figures }) => figures.about !== 'channel')].map(({ id }) => id)
  const pack = byHand('pack', 'pack', ['label', ...rest], {
    runS: quantity * times.packPerUnitS,
    count: quantity,
    serves: all
  })
  return [...risers, wash, ...fitted, ...cure, leak, label, pack]
}

interface Amounts {
  readonly setUpS?: number
  readonly runS?: number
  readonly count: number
  readonly serves: readonly string[]
  readonly figures?: BenchStep['figures']
}

const byHand = (id: string, kind: OperationKind, needs: readonly string[], amounts: Amounts): BenchStep => ({
  id,
  kind,
  needs,
  toolId: null,
  toolName: '',
  machine: 'hand',
  drillId: null,
  rpmCeiling: null,
  rpmGrade: null,
  setUpS: amounts.setUpS ?? 0,
  runS: amounts.runS ?? 0,
  waitS: 0,
  serves: amounts.serves,
  count: amounts.count,
  figures: amounts.figures ?? {},
  cautionIds: []
})

/** Lengths closer than this share a stop setting. */
const SAME_STOP_MM = 0.001
const POWERED = ['power_mitre', 'circular', 'jigsaw']

/** One step for each setting of the stop block: all pieces of that length in one go. */
const cutSteps = (input: BenchInput): readonly BenchStep[] => {
  const left = [...input.pieces]
  const longestFirst = [...new Set(input.pieces.map(({ lengthMm }) => lengthMm))].sort((a, b) => b - a)
  const steps: BenchStep[] = []
  for (const lengthMm of [...input.stopSettingsMm, ...longestFirst]) {
    const same = left.filter((piece) => Math.abs(piece.lengthMm - lengthMm) < SAME_STOP_MM)
    if (same.length === 0) continue
    for (const piece of same) left.splice(left.indexOf(piece), 1)
    const id = `cut-${steps.length + 1}`
    const step = byHand(id, 'cut', ['mark'], {
      setUpS: input.times.stopSettingS,
      runS: same.length * input.times.cutPerPieceS,
      count: same.length,
      serves: same.map((piece) => piece.id),
      figures: { lengthMm }
    })
    const machine = POWERED.includes(input.cutting.tool) ? 'saw' : 'hand'
    steps.push({ ...step, machine, toolId: input.cutting.tool, toolName: input.cutting.toolName })
  }
  return steps
}

const needsCure = (joint: string): boolean => joint === 'solvent-cement' || joint.startsWith('silicone')

const endSteps = (input: BenchInput): readonly BenchStep[] => {
  const groups = new Map<string, { name: string; joint: string; ends: number; serves: Set<string> }>()
  for (const { channelId, closures } of input.channels) {
    for (const { closureId, name, joint } of closures) {
      const group = groups.get(closureId) ?? { name, joint, ends: 0, serves: new Set<string>() }
      group.ends += 1
      group.serves.add(channelId)
      groups.set(closureId, group)
    }
  }
  return [...groups.values()].map(({ name, joint, ends, serves }, i) =>
    byHand(`fit-end-${i + 1}`, 'fit-end', ['wash'], {
      runS: ends * input.quantity * input.times.jointS,
      count: ends * input.quantity,
      serves: [...serves],
      figures: { name, joint }
    })
  )
}

const openingSteps = (input: BenchInput): readonly BenchStep[] => {
  const groups = new Map<string, { openings: number; serves: Set<string> }>()
  for (const { channelId, holes } of input.channels) {
    for (const { fitting } of holes) {
      if (fitting === null) continue
      const group = groups.get(fitting) ?? { openings: 0, serves: new Set<string>() }
      group.openings += 1
      group.serves.add(channelId)
      groups.set(fitting, group)
    }
  }
  return [...groups].map(([name, { openings, serves }], i) =>
    byHand(`fit-opening-${i + 1}`, 'fit-opening', ['wash'], {
      runS: openings * input.quantity * input.times.jointS,
      count: openings * input.quantity,
      serves: [...serves],
      figures: { name }
    })
  )
}
