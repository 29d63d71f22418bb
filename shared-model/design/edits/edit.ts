import { failed, ok, type Result } from '../../outcome'
import { checkAgainst } from '../checked'
import type { Design } from '../design'
import { channelSchema } from '../design-schema'
import type { DocumentProblem } from '../problem'

/** What an edit gives back: the changed document, or why it cannot be made. Nothing is changed in place. */
export type Edited<T> = Result<T, DocumentProblem>

type Channel = Design['channels'][number]

export const notFound = (what: string, id: string) =>
  failed<DocumentProblem>({ code: 'edit-not-found', figures: { what, id } })

export const inUse = (what: string, id: string, uses: number) =>
  failed<DocumentProblem>({ code: 'edit-in-use', figures: { what, id, uses } })

/** The design with one channel changed, when the changed channel is within the bounds of the parser. */
export const withChannel = (
  design: Design,
  channelId: string,
  change: (channel: Channel) => Edited<Channel>
): Edited<Design> => {
  const channel = design.channels.find((each) => each.id === channelId)
  if (channel === undefined) return notFound('channel', channelId)
  const made = change(channel)
  if (!made.ok) return made
  const checked = checkChannel(made.value)
  if (!checked.ok) return checked
  return ok({ ...design, channels: design.channels.map((each) => (each === channel ? made.value : each)) })
}

/** The same edit on several channels, all or none. */
export const withChannels = (
  design: Design,
  channelIds: readonly string[],
  change: (channel: Channel) => Edited<Channel>
): Edited<Design> =>
  channelIds.reduce<Edited<Design>>((made, id) => (made.ok ? withChannel(made.value, id, change) : made), ok(design))

export const checkChannel = (channel: Channel): Edited<Channel> => {
  const checked = checkAgainst(channelSchema, channel, `channels.${channel.id}`)
  if (checked.ok) return ok(channel)
  const [first] = checked.problem
  return first === undefined ? ok(channel) : failed(first)
}
