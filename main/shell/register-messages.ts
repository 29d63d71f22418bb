import { MESSAGE_NAMES, type MessageName, type Messages, type Reply } from '../bridge/contract'
import { parsePayload } from '../bridge/payloads'
import type { Handlers } from './file-desk'
import type { MessagePort } from './ports'
import { trustedSender } from './trusted-sender'

/**
 * Puts every message's handler on a port: sender checked, payload parsed, a handler's failure an answer like any other.
 * `handlersOf` finds the handlers of the window a message comes from, by the number of its contents.
 */
export function registerMessages(port: MessagePort, handlersOf: (contentsId: number) => Handlers | null): void {
  for (const name of MESSAGE_NAMES) {
    port.handle(name, async (event, payload) => {
      const handlers = trustedSender(event) ? handlersOf(event.sender.id) : null
      return handlers === null ? refused('sender') : answer(handlers, name, payload)
    })
  }
}

async function answer<M extends MessageName>(handlers: Handlers, name: M, payload: unknown): Promise<Reply<unknown>> {
  const parsed = parsePayload(name, payload)
  if (!parsed.ok) return refused(parsed.field)
  try {
    const handle: (value: Messages[M]['payload']) => Promise<Reply<unknown>> = handlers[name]
    return await handle(parsed.value)
  } catch {
    return { ok: false, problem: { code: 'failed', about: name } }
  }
}

const refused = (about: string): Reply<never> => ({ ok: false, problem: { code: 'bad-message', about } })
