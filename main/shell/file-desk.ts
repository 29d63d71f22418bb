import { mkdir, realpath } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import type { DocumentKind, MessageName, Messages, OpenedFile, Reply, SavedFile } from '../bridge/contract'
import { designFileName } from '../files/document-argument'
import type { FileIds } from '../files/file-ids'
import type { HeldFiles } from '../files/held-files'
import { readDocument, stampOf } from '../files/read-document'
import { noteRecent, readRecent } from '../files/recent-files'
import { recoveryIn } from '../files/recovery'
import { recoveryForWindow } from '../files/recovery-slot'
import { saveDocument } from '../files/save-document'
import { saveFile } from '../files/save-file'
import type { Desktop } from './ports'

export type Handlers = {
  readonly [M in MessageName]: (payload: Messages[M]['payload']) => Promise<Reply<Messages[M]['answer']>>
}

export interface FileDesk {
  readonly handlers: Handlers
  /** A design that the system or a menu hands over: read, and told to the page once it listens. */
  readonly openPath: (path: string) => Promise<void>
}

/** What the windows of one run of the program have in common; `home` is the program's own data folder. */
export interface Premises {
  readonly home: string
  readonly ids: FileIds
  readonly held: HeldFiles
}

const done = <T>(value: T): Reply<T> => ({ ok: true, value })

/** One handler a message for one window, over plain file services and a desktop's dialogs. Windows count from 1. */
export function fileDesk(desktop: Desktop, { home, ids, held }: Premises, window: number): FileDesk {
  const recentList = recentListIn(home)
  const recovery = recoveryForWindow(recoveryIn(recoveryFolderIn(home)), window)
  const waiting: OpenedFile[] = []
  let listening = false
  let edited = false
  /** The record that the page keeps of its unsaved design. */
  let kept: string | null = null

  const remember = async (path: string, kind: DocumentKind): Promise<void> => {
    await mkdir(home, { recursive: true })
    await noteRecent(recentList, { path, kind })
    desktop.recentChanged(path)
  }
  const openAt = async (given: string, kind: DocumentKind): Promise<Reply<OpenedFile>> => {
    // Links resolved: one file has one name, and a save replaces the file and not the link to it.
    const path = await realpath(given).catch(() => given)
    const read = await readDocument(path)
    if (!read.ok) return read
    await remember(path, kind)
    const name = basename(path)
    const copy = !held.hold(window, kind, path)
    if (copy) desktop.say(`${name} is open in another window. This is a copy: saving it asks for a name of its own.`)
    return done({ fileId: copy ? ids.copy(name) : ids.of(path), name, kind, copy, ...read.value })
  }
  const openPath = async (path: string): Promise<void> => {
    const file = await openAt(path, 'design')
    if (!file.ok) return desktop.say(`${file.problem.about} was not opened: ${file.problem.code.replaceAll('-', ' ')}.`)
    if (listening) desktop.tell({ kind: 'opened', file: file.value })
    else waiting.push(file.value)
  }
  const saveAs = async (kind: DocumentKind, name: string, text: string): Promise<Reply<SavedFile | null>> => {
    const given = await desktop.askSave(kind === 'design' ? designFileName(name) : name)
    if (given === null) return done(null)
    const path = await realpath(given).catch(() => given)
    const holder = held.holder(path)
    if (holder !== null && holder !== window) {
      return { ok: false, problem: { code: 'open-elsewhere', about: basename(path) } }
    }
    const saved = await saveDocument(path, text, null, true, desktop.now())
    if (!saved.ok) return saved
    await remember(path, kind)
    held.hold(window, kind, path)
    return done({ fileId: ids.of(path), name: basename(path), stamp: stampOf(text) })
  }

  const handlers: Handlers = {
    'document:open': async ({ kind }) => {
      const path = await desktop.askOpen(kind)
      return path === null ? done(null) : openAt(path, kind)
    },
    'document:open-recent': async ({ fileId }) => {
      const path = ids.path(fileId)
      const known = (await readRecent(recentList)).find((each) => each.path === path)
      if (known === undefined) return { ok: false, problem: { code: 'unknown-file', about: fileId } }
      return openAt(known.path, known.kind)
    },
    'document:save': async ({ fileId, text, stamp, overwrite }) => {
      const copied = ids.copyName(fileId)
      if (copied !== null) return saveAs('design', copied, text)
      const path = ids.path(fileId)
      if (path === null) return { ok: false, problem: { code: 'unknown-file', about: fileId } }
      const saved = await saveDocument(path, text, stamp, overwrite, desktop.now())
      return saved.ok ? done({ fileId, name: basename(path), stamp: saved.value }) : saved
    },
    'document:save-as': ({ kind, suggestedName, text }) => saveAs(kind, suggestedName, text),
    'recent:list': async () => {
      const files = await readRecent(recentList)
      return done(
        files.map(({ path, kind }) => ({ fileId: ids.of(path), name: basename(path), folder: dirname(path), kind }))
      )
    },
    'export:save': async ({ suggestedName, bytes }) => {
      const path = await desktop.askSave(suggestedName)
      if (path === null) return done(null)
      const saved = await saveFile(path, bytes)
      return saved.ok ? done(basename(path)) : saved
    },
    'recovery:write': ({ key, name, text }) => {
      if (key.startsWith(DESIGN_KEY)) kept = key
      return recovery.write(key, name, text, desktop.now())
    },
    'recovery:list': async () => done(await recovery.list()),
    'recovery:drop': async ({ key }) => {
      await recovery.drop(key)
      return done(null)
    },
    'window:state': async (state) => {
      edited = state.edited
      desktop.setWindow(state.title, edited)
      return done(null)
    },
    'window:ready': async () => {
      listening = true
      for (const file of waiting.splice(0)) desktop.tell({ kind: 'opened', file })
      return done(null)
    },
    'window:close': async () => {
      // The person was asked and has decided: the changes are in the file or given up, and not offered again.
      if (edited && kept !== null) await recovery.drop(kept)
      desktop.closeWindow()
      return done(null)
    },
    'print:pdf': async ({ bytes }) => done(await desktop.printPdf(bytes))
  }
  return { handlers, openPath }
}

/** The page keeps its unsaved design under a key that begins so, another in each run. */
const DESIGN_KEY = 'design'

export const recentListIn = (home: string): string => join(home, 'recent.json')
export const recoveryFolderIn = (home: string): string => join(home, 'recovery')
