import type { MaterialId } from '../materials'
import type { BenchChannel, BenchCollar, BenchHole, BenchInput } from './bench-input'
import type { OperationKind } from './bench-plan'
import { sawsFalling } from './drill-rows'
import type { DrillOperation, DrillPiece, DrillWork } from './drill-work'
import { sawOf } from './saw-of'

/** A cutter that a drill turns: a hole saw, or a twist drill by its diameter. */
interface DrillTool {
  readonly id: string
  readonly name: string
  readonly diameterMm: number
}

/** What one operation of the sequencing problem stands for on one piece. */
export interface DrillLabel {
  readonly kind: OperationKind
  readonly material: MaterialId
  /** Of what it serves: a channel, a need, a riser. */
  readonly servesId: string
  readonly about: 'channel' | 'sheet' | 'core' | 'cup'
  readonly name: string
  /** Holes, collars or cups over all alike pieces. */
  readonly count: number
  readonly runS: number
}

export interface Drilling {
  readonly work: DrillWork
  readonly tools: readonly DrillTool[]
  /** By piece, then by operation; what is done in one go stands together. */
  readonly labels: readonly (readonly (readonly DrillLabel[])[])[]
}

const MM_PER_SAW_STEP = 25.4

/** Turns the batch into pieces with operations: channels (sets of saws), sheets of collars (chains), cores, cups. */
export const drillingOf = (input: BenchInput): Drilling => {
  const tools: DrillTool[] = []
  const draft = drafts(input)
  const toolOf = (tool: DrillTool): number => {
    const known = tools.findIndex(({ id }) => id === tool.id)
    return known >= 0 ? known : tools.push(tool) - 1
  }
  const pieces = draft.map(
    (piece): DrillPiece => ({
      count: piece.count,
      operations: piece.operations.map(({ tool, after }): DrillOperation => ({ tool: toolOf(tool), after })),
      waitsFor: piece.comesFrom.flatMap((needId) => parents(draft, needId))
    })
  )
  return {
    work: {
      tools: tools.length,
      drills: Math.min(3, Math.max(1, input.drills.length)),
      pieces,
      changeS: input.times.toolChangeS,
      mountS: input.times.mountS
    },
    tools,
    labels: draft.map(({ operations }) => operations.map(({ labels }) => labels))
  }
}

interface DraftOperation {
  readonly tool: DrillTool
  readonly after: readonly number[]
  readonly labels: readonly DrillLabel[]
}

interface Draft {
  readonly count: number
  readonly operations: readonly DraftOperation[]
  /** Needs whose cores these pieces are cut from. */
  readonly comesFrom: readonly string[]
}

/** The operations that drop a need's cores. */
const parents = (draft: readonly Draft[], needId: string) =>
  draft.flatMap(({ operations }, piece) =>
    operations.flatMap(({ labels }, operation) =>
      labels.some((label) => label.servesId === needId && label.kind === 'saw-inner') ? [{ piece, operation }] : []
    )
  )

/** Parents before their cores: collars go by falling outer saw. */
const drafts = (input: BenchInput): readonly Draft[] => {
  const falling = [...input.collars].sort(
    (a, b) => (sawOf(input, b.outerSawId)?.diameterMm ?? 0) - (sawOf(input, a.outerSawId)?.diameterMm ?? 0)
  )
  const sheets = sheetDraft(input, falling)
  return [
    ...input.channels
      .filter(({ holes, toDrill }) => holes.length > 0 && toDrill !== 0)
      .map((channel) => channelDraft(input, channel)),
    ...(sheets.operations.length > 0 ? [sheets] : []),
    ...falling.flatMap((collar) => coreDrafts(input, collar)),
    ...input.risers.flatMap((riser) => (riser.opened.by === 'bore' && riser.count > 0 ? [cupDraft(input, riser)] : []))
  ]
}

const sawTool = (input: BenchInput, id: string): DrillTool => {
  const saw = sawOf(input, id)
  return { id, name: saw?.name ?? id, diameterMm: saw?.diameterMm ?? 0 }
}

const twistTool = (diameterMm: number, id = `twist-${diameterMm}`): DrillTool => ({ id, name: '', diameterMm })

const secondsPerHole = (input: BenchInput, diameterMm: number): number =>
  input.times.sawPerHoleS + (input.times.sawPerInchS * Math.max(0, diameterMm - MM_PER_SAW_STEP)) / MM_PER_SAW_STEP

const channelDraft = (input: BenchInput, channel: BenchChannel): Draft => {
  const { toDrill = input.quantity } = channel
  const operations: DraftOperation[] = []
  const label = (kind: OperationKind, holes: number, secondsEach: number): DrillLabel => ({
    kind,
    material: channel.material,
    servesId: channel.channelId,
    about: 'channel',
    name: '',
    count: holes * toDrill,
    runS: holes * toDrill * secondsEach
  })
  const { pilotMm } = input
  const sawn = channel.holes.filter(({ sawId }) => sawId !== null)
  const own = pilotMm === null ? 0 : input.times.pilotPerHoleS
  if (pilotMm !== null && sawn.length > 0) {
    operations.push({ tool: twistTool(pilotMm, 'pilot'), after: [], labels: [label('pilot', sawn.length, own)] })
  }
  const pilot = operations.length > 0 ? [0] : []
  const inArbor = pilotMm === null ? input.times.pilotPerHoleS : 0
  const groups = new Map<string, { readonly saws: readonly string[]; holes: number }>()
  for (const hole of channel.holes) {
    const saws = sawsThrough(input, hole)
    const key = hole.sawId === null ? `twist ${hole.diameterMm}` : saws.length === 1 ? hole.sawId : saws.join(' ')
    const group = groups.get(key)
    if (group) group.holes += 1
    else groups.set(key, { saws, holes: 1 })
  }
  for (const [key, { saws, holes }] of groups) {
    if (saws.length === 0) {
      const tool = twistTool(Number(key.slice('twist '.length)))
      const labels = [label('saw', holes, secondsPerHole(input, tool.diameterMm))]
      operations.push({ tool, after: [], labels })
      continue
    }
    let after: readonly number[] = pilot
    for (const { saw, kind } of concentricSteps(saws)) {
      const tool = sawTool(input, saw)
      const seconds =
        (kind === 'score' ? 0.5 : 1) * secondsPerHole(input, tool.diameterMm) + (after === pilot ? inArbor : 0)
      operations.push({ tool, after, labels: [label(kind, holes, seconds)] })
      after = [operations.length - 1]
    }
  }
  return { count: toDrill, operations, comesFrom: [] }
}

/** The saws of one centre, the widest first; none for a twist drill. */
const sawsThrough = (input: BenchInput, { sawId, alsoSawIds }: BenchHole): readonly string[] =>
  sawId === null ? [] : alsoSawIds.length === 0 ? [sawId] : sawsFalling(input, [sawId, ...alsoSawIds])

/** The larger scores, the smaller goes right through, then the larger finishes in its own groove. */
const concentricSteps = (
  falling: readonly string[]
): readonly { readonly saw: string; readonly kind: OperationKind }[] => {
  if (falling.length === 1) return falling.map((saw) => ({ saw, kind: 'saw' }))
  const outer = falling.slice(0, -1)
  return [
    ...outer.map((saw) => ({ saw, kind: 'score' as const })),
    ...falling.slice(-1).map((saw) => ({ saw, kind: 'saw-inner' as const })),
    ...[...outer].reverse().map((saw) => ({ saw, kind: 'saw-through' as const }))
  ]
}

interface RingStep {
  readonly saw: string
  readonly kind: OperationKind
}

const ringSteps = (collar: BenchCollar, isBlank: boolean): readonly RingStep[] => {
  const { outerSawId, innerSawId } = collar
  if (innerSawId === null) return isBlank ? [] : [{ saw: outerSawId, kind: 'cut-collar-blank' }]
  if (isBlank) return [{ saw: innerSawId, kind: 'saw-inner' }]
  return [
    { saw: outerSawId, kind: 'score' },
    { saw: innerSawId, kind: 'saw-inner' },
    { saw: outerSawId, kind: 'saw-through' }
  ]
}

const ringLabel = (
  input: BenchInput,
  collar: BenchCollar,
  kind: OperationKind,
  count: number,
  of: number
): DrillLabel => ({
  kind,
  material: collar.material,
  servesId: collar.needId,
  about: 'sheet',
  name: collar.name,
  count,
  runS: (count * input.times.collarS) / of
})

/** All collars of the sheets: each sheet is clamped once for a pass, whichever kinds it holds. */
const sheetDraft = (input: BenchInput, collars: readonly BenchCollar[]): Draft => {
  const operations: { tool: DrillTool; after: readonly number[]; labels: DrillLabel[]; readonly key: string }[] = []
  for (const collar of collars.filter(({ fromSheet }) => fromSheet > 0)) {
    const steps = ringSteps(collar, false)
    let key = ''
    let after: readonly number[] = []
    for (const { saw, kind } of steps) {
      key += ` ${kind} ${saw}`
      const label = ringLabel(input, collar, kind, collar.fromSheet, steps.length)
      const known = operations.findIndex((operation) => operation.key === key)
      if (known >= 0) operations[known]?.labels.push(label)
      else operations.push({ tool: sawTool(input, saw), after, labels: [label], key })
      after = [known >= 0 ? known : operations.length - 1]
    }
  }
  return { count: Math.max(1, input.collarSheets), operations, comesFrom: [] }
}

const coreDrafts = (input: BenchInput, collar: BenchCollar): readonly Draft[] =>
  collar.fromCores.flatMap(({ needId, count, sameSaw }) => {
    const steps = ringSteps(collar, sameSaw)
    if (count === 0 || steps.length === 0) return []
    const operations = steps.map(
      ({ saw, kind }, i): DraftOperation => ({
        tool: sawTool(input, saw),
        after: i === 0 ? [] : [i - 1],
        labels: [{ ...ringLabel(input, collar, kind, count, steps.length), about: 'core' }]
      })
    )
    return [{ count, operations, comesFrom: [needId] }]
  })

const cupDraft = (input: BenchInput, riser: BenchInput['risers'][number]): Draft => {
  const tool = sawTool(input, riser.opened.by === 'bore' ? riser.opened.sawId : '')
  const label: DrillLabel = {
    kind: 'bore-cup',
    material: riser.material,
    servesId: riser.id,
    about: 'cup',
    name: riser.name,
    count: riser.count,
    runS: riser.count * input.times.boreCupS
  }
  return { count: riser.count, operations: [{ tool, after: [], labels: [label] }], comesFrom: [] }
}
