import type { Result } from '../outcome'
import { checkAgainst } from './checked'
import type { Design } from './design'
import { channelSchema, designSchema, MOST_CHANNELS } from './design-schema'
import { parseWorkshop } from './parse'
import { designParts } from './part-checks'
import type { DocumentProblem } from './problem'
import { designReferences } from './references'
import type { Workshop } from './workshop'

/** Channels that have passed: an edit leaves most of them as they are. */
const passed = new WeakSet<object>()

/**
 * Answers: would this design, once written, be refused by {@link parseDesign}? The first reason, or null. The same checks,
 * but those of a channel only once for each object, so that they can follow every edit.
 */
export const designFault = (design: Design): DocumentProblem | null => {
  const count = design.channels.length
  if (count > MOST_CHANNELS) {
    const figures = { field: 'channels', count, least: 0, most: MOST_CHANNELS }
    return { code: 'count-out-of-range', figures, where: { field: 'channels' } }
  }
  for (const channel of design.channels) {
    if (passed.has(channel)) continue
    const fault = firstOf(checkAgainst(channelSchema, written(channel), `channels.${channel.id}`))
    if (fault !== null) return fault
    passed.add(channel)
  }
  const [reference = null] = designReferences(design)
  const [part = null] = designParts(design)
  return firstOf(checkAgainst(designSchema, written({ ...design, channels: [] }))) ?? reference ?? part
}

/** Likewise of a workshop. */
export const workshopFault = (workshop: Workshop): DocumentProblem | null => firstOf(parseWorkshop(written(workshop)))

/** What a file gives back: a key without a value is not in it. */
const written = (value: object): unknown => JSON.parse(JSON.stringify(value))

const firstOf = (checked: Result<unknown, readonly DocumentProblem[]>): DocumentProblem | null =>
  checked.ok ? null : (checked.problem[0] ?? null)
