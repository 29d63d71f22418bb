import type { DocumentKind, ShellEvent } from '../bridge/contract'

/** What the message handlers need of a desktop; the shell gives Electron's, tests give their own. */
export interface Desktop {
  readonly askOpen: (kind: DocumentKind) => Promise<string | null>
  readonly askSave: (suggestedName: string) => Promise<string | null>
  readonly printPdf: (bytes: Uint8Array) => Promise<boolean>
  readonly setWindow: (title: string, edited: boolean) => void
  readonly closeWindow: () => void
  readonly tell: (event: ShellEvent) => void
  /** Says something to the person in a box of the system's own. */
  readonly say: (words: string) => void
  /** The list of recent files has a new head. */
  readonly recentChanged: (path: string) => void
  readonly now: () => Date
}

/** The part of `ipcMain` that is used. */
export interface MessagePort {
  readonly handle: (channel: string, handler: (event: SenderEvent, payload: unknown) => Promise<unknown>) => void
}

export interface SenderEvent {
  readonly sender: { readonly id: number }
  readonly senderFrame: { readonly url: string; readonly parent: unknown } | null
}
