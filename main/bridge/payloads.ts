import type { MessageName, Messages } from './contract'
import { bytes, fileId, givenName, key, kind, stamp, text } from './fields'
import { z } from './zod-setup'

/** What each message may carry; anything else is refused before a handler sees it. */
const payloads = {
  'document:open': z.strictObject({ kind }),
  'document:open-recent': z.strictObject({ fileId }),
  'document:save': z.strictObject({ fileId, text, stamp, overwrite: z.boolean() }),
  'document:save-as': z.strictObject({ kind, suggestedName: givenName, text }),
  'recent:list': z.null(),
  'export:save': z.strictObject({ suggestedName: givenName, bytes }),
  'recovery:write': z.strictObject({ key, name: givenName, text }),
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
