import { askForFile, download } from './download'
import {
  type DocumentKind,
  type FileRef,
  type HostProblem,
  type HostResult,
  MOST_FILE_BYTES,
  type OpenedFile,
  type RecentFile
} from './host'
import type { KeptValues } from './kept-values'

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
export function browserFiles(kept: KeptValues) {
  const readKept = async (): Promise<readonly KeptFile[]> => {
    const found = await kept.get(RECENTS).catch(() => undefined)
    return Array.isArray(found) ? (found as readonly KeptFile[]) : []
  }
  const remember = async (handle: FileSystemFileHandle, changedAt: number): Promise<FileRef> => {
    const before = await readKept()
    const matches = await Promise.all(before.map((each) => each.handle.isSameEntry(handle).catch(() => false)))
    const same = before.find((_, index) => matches[index])
    const id = same?.id ?? crypto.randomUUID()
    const entry: KeptFile = { id, name: handle.name, openedOn: new Date().toISOString(), handle, changedAt }
    await kept.put(RECENTS, [entry, ...before.filter((each) => each.id !== id)].slice(0, MOST_RECENTS)).catch(() => {})
    return { id, name: handle.name }
  }
  const readText = async (file: File): Promise<HostResult<string>> =>
    file.size > MOST_FILE_BYTES
      ? no({ code: 'file-too-large', name: file.name, mostBytes: MOST_FILE_BYTES })
      : { ok: true, value: await file.text() }

  const openHandle = async (handle: FileSystemFileHandle): Promise<HostResult<OpenedFile>> => {
    const file = await handle.getFile()
    const text = await readText(file)
    return text.ok ? { ok: true, value: { file: await remember(handle, file.lastModified), text: text.value } } : text
  }

  const open = async (kind: DocumentKind): Promise<HostResult<OpenedFile>> => {
    try {
      if (window.showOpenFilePicker !== undefined) {
        const [handle] = await window.showOpenFilePicker({ types: [TYPES[kind]] })
        return handle === undefined ? no({ code: 'given-up' }) : await openHandle(handle)
      }
      const file = await askForFile('.json,.sillwright,application/json')
      if (file === null) return no({ code: 'given-up' })
      const text = await readText(file)
      return text.ok ? { ok: true, value: { file: { id: '', name: file.name }, text: text.value } } : text
    } catch (error) {
      return no(problemOf(error, 'the file'))
    }
  }

  const openRecent = async (id: string): Promise<HostResult<OpenedFile>> => {
    const entry = (await readKept()).find((each) => each.id === id)
    if (entry === undefined) return no({ code: 'file-failed', name: '', detail: 'it is no longer in the list' })
    try {
      const allowed = await entry.handle.requestPermission?.({ mode: 'read' })
      return allowed === 'denied' ? no({ code: 'given-up' }) : await openHandle(entry.handle)
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
  }): Promise<HostResult<FileRef>> => {
    try {
      if (window.showSaveFilePicker === undefined) {
        download(ask.file?.name ?? ask.name, 'application/json', ask.text)
        return { ok: true, value: { id: '', name: ask.file?.name ?? ask.name } }
      }
      const known = (await readKept()).find((each) => each.id !== '' && each.id === ask.file?.id)
      if (known !== undefined && ask.force !== true && (await known.handle.getFile()).lastModified > known.changedAt) {
        return no({ code: 'file-changed', name: known.name })
      }
      const handle =
        known?.handle ?? (await window.showSaveFilePicker({ suggestedName: ask.name, types: [TYPES[ask.kind]] }))
      const stream = await handle.createWritable()
      await stream.write(ask.text)
      await stream.close()
      return { ok: true, value: await remember(handle, (await handle.getFile()).lastModified) }
    } catch (error) {
      return no(problemOf(error, ask.name))
    }
  }

  const recents = async (): Promise<readonly RecentFile[]> =>
    (await readKept()).map(({ id, name, openedOn }) => ({ id, name, where: openedOn.slice(0, 16).replace('T', ' ') }))

  return { open, openRecent, recents, save }
}

const problemOf = (error: unknown, name: string): HostProblem =>
  error instanceof DOMException && error.name === 'AbortError'
    ? { code: 'given-up' }
    : { code: 'file-failed', name, detail: error instanceof Error ? error.message : String(error) }
