/** A file that the host can write again without asking: a path in the desktop window, a kept handle in the browser. */
export interface FileRef {
  readonly id: string
  readonly name: string
}

export type DocumentKind = 'design' | 'workshop'

export interface OpenedFile {
  readonly file: FileRef
  readonly text: string
  /** Set where another window or tab has the file open: this is a copy, with no file of its own until it is saved as one. */
  readonly copy?: boolean
}

/** A file as it was saved. */
export interface SavedRef extends FileRef {
  /** Name of the copy that was made of the file as an older version of the program had written it. */
  readonly original?: string
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
  /** The design as its file had it, to tell what would be lost; null where it was in no file. */
  readonly saved?: string | null
}

/** What an earlier run of the program left behind. */
export interface LeftRecovery extends Recovery {
  readonly key: string
}

export type HostProblem =
  | { readonly code: 'given-up' }
  | { readonly code: 'file-changed'; readonly name: string }
  | { readonly code: 'file-newer'; readonly name: string }
  | { readonly code: 'file-elsewhere'; readonly name: string }
  | { readonly code: 'file-too-large'; readonly name: string; readonly mostBytes: number }
  | { readonly code: 'file-failed'; readonly name: string; readonly detail: string }
  /** What the machine's side of the program answered or told cannot be read; `about` names the message and the field. */
  | { readonly code: 'unreadable'; readonly about: string }

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
  readonly recents: () => Promise<HostResult<readonly RecentFile[]>>
  /** Writes to the file; with none, or `as` set, asks where. `force` writes over a file that changed on disk. */
  readonly save: (ask: {
    readonly kind: DocumentKind
    readonly file: FileRef | null
    readonly name: string
    readonly text: string
    readonly force?: boolean
  }) => Promise<HostResult<SavedRef>>
  /** Writes something made from the documents: a sheet, a table, a picture. */
  readonly writeOut: (name: string, mime: string, bytes: Uint8Array<ArrayBuffer>) => Promise<HostResult<string>>
  readonly printPdf: (name: string, bytes: Uint8Array<ArrayBuffer>) => Promise<HostResult<string>>
  /** Keeps this run's unsaved work, apart from what any other run or window keeps. */
  readonly keepRecovery: (recovery: Recovery) => Promise<void>
  /** What runs that are over have left behind, newest first. Rejects where that cannot be read. */
  readonly leftRecoveries: () => Promise<readonly LeftRecovery[]>
  /** Lets go of what a run left, or of what this run keeps. */
  readonly dropRecovery: (key?: string) => Promise<void>
  /**
   * Keeps the workshop as this machine's own; false, and nothing is kept, where another window has kept another since.
   * Rejects, with nothing kept, where what is kept cannot be read.
   */
  readonly keepWorkshop: (text: string) => Promise<boolean>
  /** null where none is kept; rejects where that cannot be told. */
  readonly readWorkshop: () => Promise<string | null>
  /** Keeps a text that cannot be used under a name of its own, so that nothing is written over it. */
  readonly setAside: (text: string) => Promise<void>
  /** Whether closing the window should be asked about. */
  readonly setUnsaved: (unsaved: boolean, title: string) => void
  /** Closes the window after it asked; of no effect in a browser, which closes its own tabs. */
  readonly close: () => void
  readonly onCommand: (take: (command: Command) => void) => () => void
  /** The file that the window is opened with, as by a double click on it; null where there is none. Asked for once. */
  readonly fileAtStart: () => Promise<OpenedFile | null>
  /** Files opened from outside after that. */
  readonly onOpenedFile: (take: (file: OpenedFile) => void) => () => void
  /** What went wrong with something that nobody waits for an answer to. */
  readonly onTrouble: (take: (problem: HostProblem) => void) => () => void
}

export const MOST_FILE_BYTES = 20 * 1024 * 1024
