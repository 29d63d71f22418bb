import { z } from 'zod'
import type { MessageName, Messages } from './contract'

const TEXT_LIMIT = 20 * 1024 * 1024
const BYTES_LIMIT = 256 * 1024 * 1024
const fileId = z.string().regex(/^f\d{1,9}$/)
const kind = z.enum(['design', 'workshop'])
const text = z.string().max(TEXT_LIMIT)
const name = z.string().min(1).max(200)
const key = z.string().regex(/^[a-z0-9-]{1,64}$/)
const bytes = z.instanceof(Uint8Array).refine((value) => value.byteLength <= BYTES_LIMIT)

/** What each message may carry; anything else is refused before a handler sees it. */
const payloads = {
  'document:open': z.strictObject({ kind }),
  'document:open-recent': z.strictObject({ fileId }),
  'document:save': z.strictObject({ fileId, text, stamp: z.string().max(100), overwrite: z.boolean() }),
  'document:save-as': z.strictObject({ kind, suggestedName: name, text }),
  'recent:list': z.null(),
  'export:save': z.strictObject({ suggestedName: name, bytes }),
  'recovery:write': z.strictObject({ key, name, text }),
  'recovery:list': z.null(),
  'recovery:drop': z.strictObject({ key }),
  'window:state': z.strictObject({ title: z.string().max(300), edited: z.boolean() }),
  'window:ready': z.null(),
  'window:close': z.null(),
  'print:pdf': z.strictObject({ bytes })
} satisfies { [M in MessageName]: z.ZodType<Messages[M]['payload']> }

/** The payload rebuilt and checked, or the field that is wrong. */
export function parsePayload<M extends MessageName>(
  message: M,
  payload: unknown
): { readonly ok: true; readonly value: Messages[M]['payload'] } | { readonly ok: false; readonly field: string } {
  const parsed = payloads[message].safeParse(payload)
  if (!parsed.success) return { ok: false, field: parsed.error.issues[0]?.path.join('.') || message }
  return { ok: true, value: parsed.data as Messages[M]['payload'] }
}
