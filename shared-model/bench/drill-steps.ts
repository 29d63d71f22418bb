import type { BenchInput } from './bench-input'
import type { BenchStep } from './bench-plan'
import type { DrillOrder } from './drill-order'
import type { Drilling, DrillLabel } from './drilling'
import { speedCeiling } from './speed-ceiling'

interface Growing {
  readonly label: DrillLabel
  readonly tool: number
  readonly drill: number
  setUpS: number
  /** Piece and operation, and on which of the alike pieces; by `partKey`. */
  readonly parts: Map<number, { readonly piece: number; readonly operation: number; readonly serials: number[] }>
  readonly serves: Set<string>
}

/**
 * The drilling order as steps: what the same tool does to the same kind of thing between one fitting and the next is one
 * step over all its pieces. Tool changes and clampings are set-up time of the step they are for.
 */
export const drillSteps = (input: BenchInput, drilling: Drilling, order: DrillOrder): readonly BenchStep[] => {
  const all: Growing[] = []
  let stretch = new Map<string, Growing>()
  for (const cell of order.cells) {
    if (cell.fits.length > 0) stretch = new Map()
    let handlingS =
      (cell.mounts ? input.times.mountS : 0) + cell.fits.filter(({ free }) => !free).length * input.times.toolChangeS
    let at = -1
    for (const operation of cell.operations) {
      at += 1
      const tool = drilling.work.pieces[cell.piece]?.operations[operation]?.tool ?? 0
      for (const label of drilling.labels[cell.piece]?.[operation] ?? []) {
        const key = keyOf(tool, label)
        const step = stretch.get(key) ?? {
          label,
          tool,
          drill: cell.drills[at] ?? 0,
          setUpS: 0,
          parts: new Map(),
          serves: new Set<string>()
        }
        if (!stretch.has(key)) {
          stretch.set(key, step)
          all.push(step)
        }
        step.setUpS += handlingS
        handlingS = 0
        step.serves.add(label.servesId)
        const part = partKey(cell.piece, operation)
        const known = step.parts.get(part)
        if (known) known.serials.push(cell.serial)
        else step.parts.set(part, { piece: cell.piece, operation, serials: [cell.serial] })
      }
    }
  }
  const kept = withoutEmpty(drilling, all)
  return kept.map((step, i) => stepOf(input, drilling, kept, step, i))
}

/** What one tool does to one kind of thing; kept with its label, which every one of the alike pieces asks for. */
const keyOf = (tool: number, label: DrillLabel): string => {
  const known = keptKeys.get(label)
  if (known !== undefined) return known
  const { kind, about, material, servesId } = label
  const key = `${tool} ${kind} ${about} ${material} ${about === 'channel' ? '' : servesId}`
  keptKeys.set(label, key)
  return key
}

const keptKeys = new WeakMap<DrillLabel, string>()

/** More than the operations of any piece: they are bits of one number. */
const MOST_OPERATIONS = 32

const partKey = (piece: number, operation: number): number => piece * MOST_OPERATIONS + operation

/** A sheet may hold none of a kind: its clamping is then set-up of the step that follows. */
const withoutEmpty = (drilling: Drilling, all: readonly Growing[]): readonly Growing[] => {
  const kept: Growing[] = []
  let setUpS = 0
  for (const step of all) {
    if (amountsOf(drilling, step).count === 0) {
      setUpS += step.setUpS
      continue
    }
    step.setUpS += setUpS
    setUpS = 0
    kept.push(step)
  }
  const last = kept[kept.length - 1]
  if (last) last.setUpS += setUpS
  return kept
}

/** Count and run time of a step; what alike pieces share is dealt out to them in whole parts. */
const amountsOf = (
  drilling: Drilling,
  { label, parts }: Growing
): { readonly count: number; readonly runS: number } => {
  let count = 0
  let runS = 0
  for (const { piece, operation, serials } of parts.values()) {
    const alike = drilling.work.pieces[piece]?.count ?? 1
    for (const one of drilling.labels[piece]?.[operation] ?? []) {
      if (one.kind !== label.kind || (label.about !== 'channel' && one.servesId !== label.servesId)) continue
      const dealt = (upTo: number) => Math.floor((upTo * one.count) / alike)
      const mine = serials.reduce((sum, serial) => sum + dealt(serial + 1) - dealt(serial), 0)
      count += mine
      runS += one.count > 0 ? (mine * one.runS) / one.count : 0
    }
  }
  return { count, runS }
}

const stepOf = (
  input: BenchInput,
  drilling: Drilling,
  all: readonly Growing[],
  step: Growing,
  index: number
): BenchStep => {
  const { label } = step
  const tool = drilling.tools[step.tool]
  const { count, runS } = amountsOf(drilling, step)
  const speed = speedCeiling(label.material, tool?.diameterMm ?? 0)
  return {
    id: `drill-${index + 1}`,
    kind: label.kind,
    needs: needsOf(drilling, all, step, index),
    toolId: tool?.id ?? null,
    toolName: tool?.name ?? '',
    machine: 'drill',
    drillId: input.drills[step.drill]?.id ?? null,
    rpmCeiling: speed?.rpm ?? null,
    rpmGrade: speed?.grade ?? null,
    setUpS: step.setUpS,
    runS,
    waitS: 0,
    serves: [...step.serves],
    count,
    figures: {
      diameterMm: tool?.diameterMm ?? 0,
      ...(label.name === '' ? {} : { name: label.name }),
      about: label.about
    },
    cautionIds: []
  }
}

/** Earlier steps that did what this one's operations wait for, and the marking out. */
const needsOf = (drilling: Drilling, all: readonly Growing[], step: Growing, index: number): readonly string[] => {
  const needs = new Set<string>()
  if (step.label.about === 'channel') needs.add('mark-holes')
  if (step.label.about === 'sheet') needs.add('mark-sheets')
  for (const { piece, operation } of step.parts.values()) {
    const own = (drilling.work.pieces[piece]?.operations[operation]?.after ?? []).map((o) => partKey(piece, o))
    const others = (drilling.work.pieces[piece]?.waitsFor ?? []).map((wait) => partKey(wait.piece, wait.operation))
    for (const part of [...own, ...others]) {
      for (let i = 0; i < index; i += 1) if (all[i]?.parts.has(part)) needs.add(`drill-${i + 1}`)
    }
  }
  return [...needs]
}
