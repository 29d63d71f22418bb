import { mkdir } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import type { DocumentKind, MessageName, Messages, OpenedFile, Reply } from '../bridge/contract'
import { type FileIds, fileIds } from '../files/file-ids'
import { readDocument, stampOf } from '../files/read-document'
import { noteRecent, readRecent } from '../files/recent-files'
import { recoveryIn } from '../files/recovery'
import { saveDocument } from '../files/save-document'
import { saveFile } from '../files/save-file'
import type { Desktop } from './ports'

export type Handlers = {
  readonly [M in MessageName]: (payload: Messages[M]['payload']) => Promise<Reply<Messages[M]['answer']>>
}

export interface FileDesk {
  readonly handlers: Handlers
  /** A design that the system or a drop hands over: read, and told to the page. */
  readonly openPath: (path: string) => Promise<void>
}

const done = <T>(value: T): Reply<T> => ({ ok: true, value })

/** One handler a message, over plain file services and a desktop's dialogs. `home` is the program's own data folder. */
export function fileDesk(desktop: Desktop, home: string, ids: FileIds = fileIds()): FileDesk {
  const recentList = join(home, 'recent.json')
  const recovery = recoveryIn(join(home, 'recovery'))

  const openAt = async (path: string, kind: DocumentKind): Promise<Reply<OpenedFile>> => {
    const read = await readDocument(path)
    if (!read.ok) return read
    await remember(path, kind)
    return done({ fileId: ids.of(path), name: basename(path), kind, ...read.value })
  }
  const remember = async (path: string, kind: DocumentKind): Promise<void> => {
    await mkdir(home, { recursive: true })
    await noteRecent(recentList, { path, kind })
  }

  const openPath = async (path: string): Promise<void> => {
    const file = await openAt(path, 'design')
    if (file.ok) desktop.tell({ kind: 'opened', file: file.value })
  }

  const messages: Handlers = {
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
      const path = ids.path(fileId)
      if (path === null) return { ok: false, problem: { code: 'unknown-file', about: fileId } }
      const saved = await saveDocument(path, text, stamp, overwrite, desktop.now())
      return saved.ok ? done({ fileId, name: basename(path), stamp: saved.value }) : saved
    },
    'document:save-as': async ({ kind, suggestedName, text }) => {
      const path = await desktop.askSave(suggestedName)
      if (path === null) return done(null)
      const saved = await saveDocument(path, text, null, true, desktop.now())
      if (!saved.ok) return saved
      await remember(path, kind)
      return done({ fileId: ids.of(path), name: basename(path), stamp: stampOf(text) })
    },
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
    'recovery:write': ({ key, name, text }) => recovery.write(key, name, text, desktop.now()),
    'recovery:list': async () => done(await recovery.list()),
    'recovery:drop': async ({ key }) => {
      await recovery.drop(key)
      return done(null)
    },
    'window:state': async ({ title, edited }) => {
      desktop.setWindow(title, edited)
      return done(null)
    },
    'window:close': async () => {
      desktop.closeWindow()
      return done(null)
    },
    'print:pdf': async ({ bytes }) => done(await desktop.printPdf(bytes))
  }
  return { handlers: messages, openPath }
}
