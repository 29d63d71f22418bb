import type { Bridge, FileProblem, Reply } from '../../main/bridge/contract'
import type { FileRef, Host, HostResult, OpenedFile, Recovery } from './host'
import { MOST_FILE_BYTES } from './host'
import { recoveryFrom } from './recovery'

declare global {
  interface Window {
    readonly sillwright?: Bridge
  }
}

const RECOVERY = 'design'
const WORKSHOP = 'workshop'
const GIVEN_UP = { ok: false, problem: { code: 'given-up' } } as const

/** The desktop window: every file goes over the bridge; the page never names a path. */
export function desktopHost(bridge: Bridge): Host {
  /** What each file was on disk when it was last read or written here. */
  const stamps = new Map<string, string>()
  const taken = (file: { readonly fileId: string; readonly name: string; readonly stamp: string }): FileRef => {
    stamps.set(file.fileId, file.stamp)
    return { id: file.fileId, name: file.name }
  }
  const opened = (
    reply: Reply<{ fileId: string; name: string; stamp: string; text: string } | null>
  ): HostResult<OpenedFile> => {
    if (!reply.ok) return { ok: false, problem: problemOf(reply.problem) }
    if (reply.value === null) return GIVEN_UP
    return { ok: true, value: { file: taken(reply.value), text: reply.value.text } }
  }
  const readKey = async (key: string): Promise<string | null> => {
    const reply = await bridge.send('recovery:list', null)
    return reply.ok ? (reply.value.find((each) => each.key === key)?.text ?? null) : null
  }
  return {
    kind: 'desktop',
    says: 'Running in the desktop window. Files are saved where you choose; work not yet saved is kept for recovery.',
    open: async (kind) => opened(await bridge.send('document:open', { kind })),
    openRecent: async (fileId) => opened(await bridge.send('document:open-recent', { fileId })),
    recents: async () => {
      const reply = await bridge.send('recent:list', null)
      if (!reply.ok) return []
      return reply.value
        .filter((each) => each.kind === 'design')
        .map((each) => ({ id: each.fileId, name: each.name, where: each.folder }))
    },
    save: async (ask) => {
      const stamp = ask.file === null ? undefined : stamps.get(ask.file.id)
      const reply =
        ask.file !== null && stamp !== undefined
          ? await bridge.send('document:save', {
              fileId: ask.file.id,
              text: ask.text,
              stamp,
              overwrite: ask.force === true
            })
          : await bridge.send('document:save-as', { kind: ask.kind, suggestedName: ask.name, text: ask.text })
      if (!reply.ok) return { ok: false, problem: problemOf(reply.problem) }
      return reply.value === null ? GIVEN_UP : { ok: true, value: taken(reply.value) }
    },
    writeOut: async (suggestedName, _mime, bytes) => {
      const reply = await bridge.send('export:save', { suggestedName, bytes })
      if (!reply.ok) return { ok: false, problem: problemOf(reply.problem) }
      return reply.value === null ? GIVEN_UP : { ok: true, value: reply.value }
    },
    printPdf: async (name, bytes) => {
      const reply = await bridge.send('print:pdf', { bytes })
      return reply.ok ? { ok: true, value: name } : { ok: false, problem: problemOf(reply.problem) }
    },
    keepRecovery: async (recovery) => {
      await bridge.send('recovery:write', { key: RECOVERY, name: nameIn(recovery), text: JSON.stringify(recovery) })
    },
    readRecovery: async () => recoveryFrom(await readKey(RECOVERY)),
    dropRecovery: async () => {
      await bridge.send('recovery:drop', { key: RECOVERY })
    },
    keepWorkshop: async (text) => {
      await bridge.send('recovery:write', { key: WORKSHOP, name: 'workshop', text })
    },
    readWorkshop: () => readKey(WORKSHOP),
    setUnsaved: (edited, title) => {
      void bridge.send('window:state', { title: title.slice(0, 300), edited })
    },
    close: () => {
      void bridge.send('window:close', null)
    },
    onCommand: (take) =>
      bridge.listen((event) => {
        if (event.kind === 'menu') take(event.command)
        if (event.kind === 'close-asked') take('close')
      }),
    onOpenedFile: (take) => {
      const stop = bridge.listen((event) => {
        if (event.kind === 'opened') take({ file: taken(event.file), text: event.file.text })
      })
      void bridge.send('window:ready', null)
      return stop
    }
  }
}

const nameIn = (recovery: Recovery): string => (recovery.file?.name ?? 'design').slice(0, 200)

const WORDS: Readonly<Record<FileProblem['code'], string>> = {
  'bad-message': 'the window sent something the program refuses',
  'not-found': 'it is no longer there',
  'too-large': 'it is too large',
  'not-text': 'it is not a text file',
  'not-a-file': 'it is not a file',
  'no-permission': 'this account may not read or write it',
  'disk-full': 'the disk is full',
  'changed-on-disk': 'it changed on disk',
  'open-elsewhere': 'it is open in another window',
  'unknown-file': 'the program no longer knows it',
  'newer-schema': 'it was written by a newer version of the program',
  failed: 'the machine refused'
}

const problemOf = ({ code, about }: FileProblem) => {
  if (code === 'changed-on-disk') return { code: 'file-changed', name: about } as const
  if (code === 'too-large') return { code: 'file-too-large', name: about, mostBytes: MOST_FILE_BYTES } as const
  return { code: 'file-failed', name: about, detail: WORDS[code] } as const
}
