import type { DocumentKind, ShellEvent } from '../bridge/contract'

/** What the message handlers need of a desktop; the shell gives Electron's, tests give their own. */
export interface Desktop {
  readonly askOpen: (kind: DocumentKind) => Promise<string | null>
  readonly askSave: (suggestedName: string) => Promise<string | null>
  readonly printPdf: (bytes: Uint8Array) => Promise<boolean>
  readonly setWindow: (title: string, edited: boolean) => void
  readonly closeWindow: () => void
  readonly tell: (event: ShellEvent) => void
  readonly now: () => Date
}

/** The part of `ipcMain` that is used. */
export interface MessagePort {
  readonly handle: (channel: string, handler: (event: SenderEvent, payload: unknown) => Promise<unknown>) => void
}

export interface SenderEvent {
  readonly senderFrame: { readonly url: string; readonly parent: unknown } | null
}
