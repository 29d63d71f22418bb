/** A file that the host can write again without asking: a path in the desktop window, a kept handle in the browser. */
export interface FileRef {
  readonly id: string
  readonly name: string
}

export type DocumentKind = 'design' | 'workshop'

export interface OpenedFile {
  readonly file: FileRef
  readonly text: string
}

export interface RecentFile {
  readonly id: string
  readonly name: string
  /** Folder, or the time it was last opened: tells two files of one name apart. */
  readonly where: string
}

/** What is kept beside the files so that a crash loses nothing. */
export interface Recovery {
  readonly savedOn: string
  readonly design: string
  readonly workshop: string
  readonly file: FileRef | null
}

export type HostProblem =
  | { readonly code: 'given-up' }
  | { readonly code: 'file-changed'; readonly name: string }
  | { readonly code: 'file-too-large'; readonly name: string; readonly mostBytes: number }
  | { readonly code: 'file-failed'; readonly name: string; readonly detail: string }

export type HostResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: HostProblem }

/** Menu entries and keys of the platform that reach the page. */
export type Command = 'new' | 'open' | 'save' | 'save-as' | 'undo' | 'redo' | 'print' | 'zoom-to-fit' | 'close'

export type Answer = 'save' | 'drop' | 'cancel'

/** What the window needs from the machine it runs on. The desktop window and the browser each answer in their way. */
export interface Host {
  readonly kind: 'desktop' | 'browser'
  /** One sentence that says which host this is and where files and recovery stand. */
  readonly says: string
  readonly open: (kind: DocumentKind) => Promise<HostResult<OpenedFile>>
  readonly openRecent: (id: string) => Promise<HostResult<OpenedFile>>
  readonly recents: () => Promise<readonly RecentFile[]>
  /** Writes to the file; with none, or `as` set, asks where. `force` writes over a file that changed on disk. */
  readonly save: (ask: {
    readonly kind: DocumentKind
    readonly file: FileRef | null
    readonly name: string
    readonly text: string
    readonly force?: boolean
  }) => Promise<HostResult<FileRef>>
  /** Writes something made from the documents: a sheet, a table, a picture. */
  readonly writeOut: (name: string, mime: string, bytes: Uint8Array<ArrayBuffer>) => Promise<HostResult<string>>
  readonly printPdf: (name: string, bytes: Uint8Array<ArrayBuffer>) => Promise<HostResult<string>>
  readonly keepRecovery: (recovery: Recovery) => Promise<void>
  readonly readRecovery: () => Promise<Recovery | null>
  readonly dropRecovery: () => Promise<void>
  /** The workshop that was last used on this machine, as text. */
  readonly keepWorkshop: (text: string) => Promise<void>
  readonly readWorkshop: () => Promise<string | null>
  /** Whether closing the window should be asked about. */
  readonly setUnsaved: (unsaved: boolean, title: string) => void
  /** Closes the window after it asked; of no effect in a browser, which closes its own tabs. */
  readonly close: () => void
  readonly onCommand: (take: (command: Command) => void) => () => void
  readonly onOpenedFile: (take: (file: OpenedFile) => void) => () => void
}

export const MOST_FILE_BYTES = 20 * 1024 * 1024
