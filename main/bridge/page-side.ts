import { badAnswer, parseAnswer, parseEvent } from './answers'
import { type Bridge, EVENT_CHANNEL, MESSAGE_NAMES } from './contract'

/** The part of `ipcRenderer` that is used. */
export interface ShellPort {
  readonly invoke: (name: string, payload: unknown) => Promise<unknown>
  readonly on: (channel: string, relay: Relay) => unknown
  readonly off: (channel: string, relay: Relay) => unknown
}

type Relay = (event: unknown, told: unknown) => void

const names: readonly string[] = MESSAGE_NAMES

/**
 * The page's end of the bridge: sends the messages of the contract and no others, and checks what comes back on arrival.
 * `send` never rejects: no answer at all is a `bad-answer` like one that cannot be read.
 */
export function pageSide(port: ShellPort): Bridge {
  return {
    send: async (name, payload) => {
      if (!names.includes(name)) return { ok: false, problem: { code: 'bad-message', about: String(name) } }
      try {
        return parseAnswer(name, await port.invoke(name, payload))
      } catch {
        return badAnswer(name)
      }
    },
    listen: (handler) => {
      const relay: Relay = (_event, told) => handler(parseEvent(told))
      port.on(EVENT_CHANNEL, relay)
      return () => {
        port.off(EVENT_CHANNEL, relay)
      }
    }
  }
}
