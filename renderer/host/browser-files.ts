import { askForFile, download } from './download'
import {
  type DocumentKind,
  type FileRef,
  type HostProblem,
  type HostResult,
  MOST_FILE_BYTES,
  type OpenedFile,
  type RecentFile,
  type SavedRef
} from './host'
import type { KeptValues } from './kept-values'
import type { TabLocks } from './tab-locks'
import { keptBefore } from './written-before'

interface KeptFile {
  readonly id: string
  readonly name: string
  readonly openedOn: string
  readonly handle: FileSystemFileHandle
  readonly changedAt: number
}

const RECENTS = 'recent-files'
const MOST_RECENTS = 8

const TYPES: Readonly<Record<DocumentKind, PickerType>> = {
  design: { description: 'Sillwright design', accept: { 'application/json': ['.json', '.sillwright'] } },
  workshop: { description: 'Sillwright workshop', accept: { 'application/json': ['.json'] } }
}

const no = <T>(problem: HostProblem): HostResult<T> => ({ ok: false, problem })

/** Open and save in a browser: through kept handles where it has them, else by open and download. */
export function browserFiles(kept: KeptValues, locks: TabLocks) {
  /** The lock of the file that stands in this tab, by kind of document. */
  const holds = new Map<DocumentKind, string>()
  /** Takes a file for this tab in place of the one it had; false where another tab has it. */
  const hold = async (kind: DocumentKind, name: string): Promise<boolean> => {
    const before = holds.get(kind)
    if (before === name) return true
    if (!(await locks.hold(name))) return false
    if (before !== undefined) locks.release(before)
    holds.set(kind, name)
    return true
  }
  const letGo = (kind: DocumentKind): void => {
    const before = holds.get(kind)
    if (before !== undefined) locks.release(before)
    holds.delete(kind)
  }
  const readKept = async (): Promise<readonly KeptFile[]> => {
    const found = await kept.get(RECENTS).catch(() => undefined)
    return Array.isArray(found) ? (found as readonly KeptFile[]) : []
  }
  const idOf = async (handle: FileSystemFileHandle): Promise<string> => {
    const before = await readKept()
    const matches = await Promise.all(before.map((each) => each.handle.isSameEntry(handle).catch(() => false)))
    return before.find((_, index) => matches[index])?.id ?? crypto.randomUUID()
  }
  const remember = async (id: string, handle: FileSystemFileHandle, changedAt: number): Promise<FileRef> => {
    const before = await readKept()
    const entry: KeptFile = { id, name: handle.name, openedOn: new Date().toISOString(), handle, changedAt }
    await kept.put(RECENTS, [entry, ...before.filter((each) => each.id !== id)].slice(0, MOST_RECENTS)).catch(() => {})
    return { id, name: handle.name }
  }
  const readText = async (file: File): Promise<HostResult<string>> =>
    file.size > MOST_FILE_BYTES
      ? no({ code: 'file-too-large', name: file.name, mostBytes: MOST_FILE_BYTES })
      : { ok: true, value: await file.text() }

  const openHandle = async (handle: FileSystemFileHandle, kind: DocumentKind): Promise<HostResult<OpenedFile>> => {
    const file = await handle.getFile()
    const text = await readText(file)
    if (!text.ok) return text
    const id = await idOf(handle)
    if (await hold(kind, `file:${id}`)) {
      return { ok: true, value: { file: await remember(id, handle, file.lastModified), text: text.value } }
    }
    letGo(kind)
    return { ok: true, value: { file: { id: '', name: file.name }, text: text.value, copy: true } }
  }
  /** Without file access a file is known by its name and contents only: enough to say that it is open twice. */
  const openPicked = async (file: File, kind: DocumentKind): Promise<HostResult<OpenedFile>> => {
    const text = await readText(file)
    if (!text.ok) return text
    const copy = !(await hold(kind, `text:${file.name}:${await digestOf(text.value)}`))
    if (copy) letGo(kind)
    return { ok: true, value: { file: { id: '', name: file.name }, text: text.value, copy } }
  }

  const open = async (kind: DocumentKind): Promise<HostResult<OpenedFile>> => {
    try {
      if (window.showOpenFilePicker !== undefined) {
        const [handle] = await window.showOpenFilePicker({ types: [TYPES[kind]] })
        return handle === undefined ? no({ code: 'given-up' }) : await openHandle(handle, kind)
      }
      const file = await askForFile('.json,.sillwright,application/json')
      return file === null ? no({ code: 'given-up' }) : await openPicked(file, kind)
    } catch (error) {
      return no(problemOf(error, 'the file'))
    }
  }

  const openRecent = async (id: string): Promise<HostResult<OpenedFile>> => {
    const entry = (await readKept()).find((each) => each.id === id)
    if (entry === undefined) return no({ code: 'file-failed', name: '', detail: 'it is no longer in the list' })
    try {
      const allowed = await entry.handle.requestPermission?.({ mode: 'read' })
      return allowed === 'denied' ? no({ code: 'given-up' }) : await openHandle(entry.handle, 'design')
    } catch (error) {
      return no(problemOf(error, entry.name))
    }
  }

  const save = async (ask: {
    readonly kind: DocumentKind
    readonly file: FileRef | null
    readonly name: string
    readonly text: string
    readonly force?: boolean
  }): Promise<HostResult<SavedRef>> => {
    try {
      if (window.showSaveFilePicker === undefined) {
        await download(ask.file?.name ?? ask.name, 'application/json', ask.text)
        return { ok: true, value: { id: '', name: ask.file?.name ?? ask.name } }
      }
      const known = (await readKept()).find((each) => each.id !== '' && each.id === ask.file?.id)
      if (
        known !== undefined &&
        ask.force !== true &&
        (await known.handle.getFile()).lastModified !== known.changedAt
      ) {
        return no({ code: 'file-changed', name: known.name })
      }
      const handle =
        known?.handle ?? (await window.showSaveFilePicker({ suggestedName: ask.name, types: [TYPES[ask.kind]] }))
      const id = known?.id ?? (await idOf(handle))
      if (!(await hold(ask.kind, `file:${id}`))) return no({ code: 'file-elsewhere', name: handle.name })
      const before = await keptBefore(handle, ask.text, kept)
      if (before === 'newer') return no({ code: 'file-newer', name: handle.name })
      const stream = await handle.createWritable()
      await stream.write(ask.text)
      await stream.close()
      const saved = await remember(id, handle, (await handle.getFile()).lastModified)
      return { ok: true, value: before === null ? saved : { ...saved, ...before } }
    } catch (error) {
      return no(problemOf(error, ask.name))
    }
  }

  const recents = async (): Promise<HostResult<readonly RecentFile[]>> => ({
    ok: true,
    value: (await readKept()).map(({ id, name, openedOn }) => ({
      id,
      name,
      where: openedOn.slice(0, 16).replace('T', ' ')
    }))
  })

  return { open, openRecent, recents, save }
}

const problemOf = (error: unknown, name: string): HostProblem =>
  error instanceof DOMException && error.name === 'AbortError'
    ? { code: 'given-up' }
    : { code: 'file-failed', name, detail: error instanceof Error ? error.message : String(error) }

const digestOf = async (text: string): Promise<string> => {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text))
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
