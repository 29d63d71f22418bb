import { contextBridge, ipcRenderer } from 'electron'
import { type Bridge, EVENT_CHANNEL, MESSAGE_NAMES, type ShellEvent } from './bridge/contract'

const names: readonly string[] = MESSAGE_NAMES

/** The page gets two functions and no more: send a message of the contract, listen to the shell's events. */
const bridge: Bridge = {
  send: (name, payload) =>
    names.includes(name)
      ? ipcRenderer.invoke(name, payload)
      : Promise.resolve({ ok: false, problem: { code: 'bad-message', about: String(name) } }),
  listen: (handler) => {
    const relay = (_event: unknown, event: ShellEvent): void => handler(event)
    ipcRenderer.on(EVENT_CHANNEL, relay)
    return () => ipcRenderer.off(EVENT_CHANNEL, relay)
  }
}

contextBridge.exposeInMainWorld('sillwright', bridge)
