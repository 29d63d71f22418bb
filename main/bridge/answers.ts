import {
  FILE_PROBLEM_CODES,
  type HeardEvent,
  MENU_COMMANDS,
  type MessageName,
  type Messages,
  type Reply,
  type ShellEvent
} from './contract'
import { fileId, fileName, key, kind, stamp, text } from './fields'
import { z } from './zod-setup'

const opened = z.strictObject({ fileId, name: fileName, kind, text, stamp, copy: z.boolean() })
const saved = z.strictObject({ fileId, name: fileName, stamp })
const recent = z.strictObject({ fileId, name: fileName, folder: fileName, kind })
const recovered = z.strictObject({ key, name: z.string(), changedAt: z.iso.datetime(), text: z.string() })
const problem = z.strictObject({ code: z.enum(FILE_PROBLEM_CODES), about: z.string() })

/** What each message may be answered with; anything else is a problem before the page sees it. */
const answers = {
  'document:open': opened.nullable(),
  'document:open-recent': opened,
  'document:save': saved.nullable(),
  'document:save-as': saved.nullable(),
  'recent:list': z.array(recent),
  'export:save': fileName.nullable(),
  'recovery:write': z.null(),
  'recovery:list': z.array(recovered),
  'recovery:drop': z.null(),
  'window:state': z.null(),
  'window:ready': z.null(),
  'window:close': z.null(),
  'print:pdf': z.boolean()
} satisfies { [M in MessageName]: z.ZodType<Messages[M]['answer']> }

const refusal = z.strictObject({ ok: z.literal(false), problem })
const envelope = z.strictObject({ ok: z.literal(true), value: z.unknown() })

const event = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('menu'), command: z.enum(MENU_COMMANDS) }),
  z.strictObject({ kind: z.literal('opened'), file: opened }),
  z.strictObject({ kind: z.literal('close-asked') })
]) satisfies z.ZodType<ShellEvent>

/** The answer rebuilt and checked; one that is not what the message may be answered with is the problem `bad-answer`. */
export function parseAnswer<M extends MessageName>(message: M, answer: unknown): Reply<Messages[M]['answer']> {
  const refused = refusal.safeParse(answer)
  if (refused.success) return refused.data
  const given = envelope.safeParse(answer)
  if (!given.success) return badAnswer(message)
  const value = answers[message].safeParse(given.data.value)
  if (!value.success) return badAnswer([message, ...fieldOf(value.error)].join(' '))
  return { ok: true, value: value.data as Messages[M]['answer'] }
}

/** What the shell told, rebuilt and checked, or `unreadable`: the page is told of that too. */
export function parseEvent(told: unknown): HeardEvent {
  const parsed = event.safeParse(told)
  return parsed.success ? parsed.data : { kind: 'unreadable', about: fieldOf(parsed.error)[0] ?? 'event' }
}

export const badAnswer = (about: string): Reply<never> => ({ ok: false, problem: { code: 'bad-answer', about } })

const fieldOf = ({ issues }: z.ZodError): readonly string[] => {
  const path = issues[0]?.path.join('.') ?? ''
  return path === '' ? [] : [path]
}
