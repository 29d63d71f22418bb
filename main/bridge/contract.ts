/**
 * The one contract between the page and the desktop shell: every message, its payload and its answer.
 * The page never sees or names a path: a file it was given has a `fileId` that only the shell can turn into one.
 */
export type DocumentKind = 'design' | 'workshop'

export type Reply<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: FileProblem }

/** A message was not what it may be, or its answer was not: `bad-message`, `bad-answer`; the rest is about a file. */
export const FILE_PROBLEM_CODES = [
  'bad-message',
  'bad-answer',
  'not-found',
  'too-large',
  'not-text',
  'not-a-file',
  'no-permission',
  'disk-full',
  'changed-on-disk',
  'newer-schema',
  'open-elsewhere',
  'unknown-file',
  'failed'
] as const

export interface FileProblem {
  readonly code: (typeof FILE_PROBLEM_CODES)[number]
  /** The file's name, or the message and the field that cannot be read. */
  readonly about: string
}

export interface OpenedFile {
  readonly fileId: string
  readonly name: string
  readonly kind: DocumentKind
  readonly text: string
  /** What the file on disk was when it was read; a save checks that it still is. */
  readonly stamp: string
  /** True where another window has the file open: this is a copy, with no file of its own until it is saved as one. */
  readonly copy: boolean
}

export interface SavedFile {
  readonly fileId: string
  readonly name: string
  readonly stamp: string
}

export interface RecentFile {
  readonly fileId: string
  readonly name: string
  readonly folder: string
  readonly kind: DocumentKind
}

export interface Recovered {
  readonly key: string
  readonly name: string
  /** ISO date and time of the last change. */
  readonly changedAt: string
  readonly text: string
}

/** Payload and answer by message. */
export interface Messages {
  readonly 'document:open': { readonly payload: { readonly kind: DocumentKind }; readonly answer: OpenedFile | null }
  readonly 'document:open-recent': { readonly payload: { readonly fileId: string }; readonly answer: OpenedFile }
  readonly 'document:save': {
    readonly payload: {
      readonly fileId: string
      readonly text: string
      readonly stamp: string
      readonly overwrite: boolean
    }
    /** Null where a copy was to be saved and the person called the dialog off. */
    readonly answer: SavedFile | null
  }
  readonly 'document:save-as': {
    readonly payload: { readonly kind: DocumentKind; readonly suggestedName: string; readonly text: string }
    readonly answer: SavedFile | null
  }
  readonly 'recent:list': { readonly payload: null; readonly answer: readonly RecentFile[] }
  readonly 'export:save': {
    readonly payload: { readonly suggestedName: string; readonly bytes: Uint8Array }
    readonly answer: string | null
  }
  readonly 'recovery:write': {
    readonly payload: { readonly key: string; readonly name: string; readonly text: string }
    readonly answer: null
  }
  readonly 'recovery:list': { readonly payload: null; readonly answer: readonly Recovered[] }
  readonly 'recovery:drop': { readonly payload: { readonly key: string }; readonly answer: null }
  readonly 'window:state': {
    readonly payload: { readonly title: string; readonly edited: boolean }
    readonly answer: null
  }
  /** The page listens from now on: whatever the system asked to be opened before may be told. */
  readonly 'window:ready': { readonly payload: null; readonly answer: null }
  readonly 'window:close': { readonly payload: null; readonly answer: null }
  readonly 'print:pdf': { readonly payload: { readonly bytes: Uint8Array }; readonly answer: boolean }
}

export type MessageName = keyof Messages

export const MESSAGE_NAMES = [
  'document:open',
  'document:open-recent',
  'document:save',
  'document:save-as',
  'recent:list',
  'export:save',
  'recovery:write',
  'recovery:list',
  'recovery:drop',
  'window:state',
  'window:ready',
  'window:close',
  'print:pdf'
] as const satisfies readonly MessageName[]

/** What the shell tells the page without being asked. */
export type ShellEvent =
  | { readonly kind: 'menu'; readonly command: MenuCommand }
  | { readonly kind: 'opened'; readonly file: OpenedFile }
  /** The window wants to close: the page asks about unsaved changes and answers with `window:close`, or not at all. */
  | { readonly kind: 'close-asked' }

export const MENU_COMMANDS = ['new', 'open', 'save', 'save-as', 'print', 'undo', 'redo', 'zoom-to-fit'] as const
export type MenuCommand = (typeof MENU_COMMANDS)[number]

/** What the page hears: an event of the shell, or that there was one which cannot be read. */
export type HeardEvent = ShellEvent | { readonly kind: 'unreadable'; readonly about: string }

/** What the preload puts on `window.sillwright`. */
export interface Bridge {
  readonly send: <M extends MessageName>(
    name: M,
    payload: Messages[M]['payload']
  ) => Promise<Reply<Messages[M]['answer']>>
  /** Returns a function that stops listening. */
  readonly listen: (handler: (event: HeardEvent) => void) => () => void
}

export const EVENT_CHANNEL = 'shell:event'
