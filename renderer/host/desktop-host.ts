import type { Bridge, MessageName, Messages, Recovered, Reply } from '../../main/bridge/contract'
import { hostProblem } from './desktop-problem'
import type { FileRef, Host, HostProblem, HostResult, LeftRecovery, OpenedFile, Recovery } from './host'
import { recoveryFrom } from './recovery'

declare global {
  interface Window {
    readonly sillwright?: Bridge
  }
}

/** Each run of the page keeps its work under a key of its own, so that what an earlier one left is not written over. */
const RECOVERY = 'design'
const WORKSHOP = 'workshop'
const GIVEN_UP = { ok: false, problem: { code: 'given-up' } } as const

/** The desktop window: every file goes over the bridge; the page never names a path. */
export function desktopHost(bridge: Bridge): Host {
  /** What each file was on disk when it was last read or written here. */
  const stamps = new Map<string, string>()
  const own = `${RECOVERY}-${crypto.randomUUID()}`
  /** The workshop as this window last saw it kept. */
  let seen: string | null = null
  /** Files opened from outside that nobody has taken yet, and who takes them. */
  const given: OpenedFile[] = []
  let takes: ((file: OpenedFile) => void) | null = null
  const handOver = (): void => {
    if (takes !== null) for (const file of given.splice(0)) takes(file)
  }
  const troubled = new Set<(problem: HostProblem) => void>()
  const trouble = (problem: HostProblem): void => {
    for (const take of troubled) take(problem)
  }
  /** Sends what nobody waits for an answer to. */
  const tell = async <M extends MessageName>(name: M, payload: Messages[M]['payload']): Promise<void> => {
    const reply = await bridge.send(name, payload)
    if (!reply.ok) trouble(hostProblem(reply.problem))
  }
  const taken = (file: { readonly fileId: string; readonly name: string; readonly stamp: string }): FileRef => {
    stamps.set(file.fileId, file.stamp)
    return { id: file.fileId, name: file.name }
  }
  const opened = (
    reply: Reply<{ fileId: string; name: string; stamp: string; text: string } | null>
  ): HostResult<OpenedFile> => {
    if (!reply.ok) return { ok: false, problem: hostProblem(reply.problem) }
    if (reply.value === null) return GIVEN_UP
    return { ok: true, value: { file: taken(reply.value), text: reply.value.text } }
  }
  const records = async (): Promise<readonly Recovered[]> => {
    const reply = await bridge.send('recovery:list', null)
    if (!reply.ok) throw new Error(reply.problem.code)
    return reply.value
  }
  const readKey = async (key: string): Promise<string | null> =>
    (await records()).find((each) => each.key === key)?.text ?? null
  const keep = async (key: string, name: string, text: string): Promise<void> => {
    const reply = await bridge.send('recovery:write', { key, name, text })
    if (!reply.ok) throw new Error(reply.problem.code)
  }
  return {
    kind: 'desktop',
    says: 'Running in the desktop window. Files are saved where you choose; work not yet saved is kept for recovery.',
    open: async (kind) => opened(await bridge.send('document:open', { kind })),
    openRecent: async (fileId) => opened(await bridge.send('document:open-recent', { fileId })),
    recents: async () => {
      const reply = await bridge.send('recent:list', null)
      if (!reply.ok) return { ok: false, problem: hostProblem(reply.problem) }
      const designs = reply.value.filter((each) => each.kind === 'design')
      return { ok: true, value: designs.map(({ fileId, name, folder }) => ({ id: fileId, name, where: folder })) }
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
      if (!reply.ok) return { ok: false, problem: hostProblem(reply.problem) }
      return reply.value === null ? GIVEN_UP : { ok: true, value: taken(reply.value) }
    },
    writeOut: async (suggestedName, _mime, bytes) => {
      const reply = await bridge.send('export:save', { suggestedName, bytes })
      if (!reply.ok) return { ok: false, problem: hostProblem(reply.problem) }
      return reply.value === null ? GIVEN_UP : { ok: true, value: reply.value }
    },
    printPdf: async (name, bytes) => {
      const reply = await bridge.send('print:pdf', { bytes })
      return reply.ok ? { ok: true, value: name } : { ok: false, problem: hostProblem(reply.problem) }
    },
    keepRecovery: (recovery) => keep(own, nameIn(recovery), JSON.stringify(recovery)),
    leftRecoveries: async () =>
      (await records()).filter(({ key }) => key !== own && key.startsWith(RECOVERY)).flatMap(leftIn),
    dropRecovery: (key = own) => tell('recovery:drop', { key }),
    keepWorkshop: async (text) => {
      if ((await readKey(WORKSHOP)) !== seen) return false
      await keep(WORKSHOP, WORKSHOP, text)
      seen = text
      return true
    },
    readWorkshop: async () => {
      seen = await readKey(WORKSHOP)
      return seen
    },
    setAside: (text) => keep(`${WORKSHOP}-aside-${crypto.randomUUID()}`, WORKSHOP, text),
    setUnsaved: (edited, title) => {
      void tell('window:state', { title: title.slice(0, 300), edited })
    },
    close: () => {
      void tell('window:close', null)
    },
    onCommand: (take) =>
      bridge.listen((event) => {
        if (event.kind === 'menu') take(event.command)
        if (event.kind === 'close-asked') take('close')
      }),
    fileAtStart: async () => {
      bridge.listen((event) => {
        if (event.kind !== 'opened') return
        given.push({ file: taken(event.file), text: event.file.text })
        handOver()
      })
      // The shell sends what waits for the page before it answers.
      await tell('window:ready', null)
      return given.shift() ?? null
    },
    onOpenedFile: (take) => {
      takes = take
      handOver()
      return () => {
        takes = null
      }
    },
    onTrouble: (take) => {
      troubled.add(take)
      const stop = bridge.listen((event) => {
        if (event.kind === 'unreadable') take({ code: 'unreadable', about: event.about })
      })
      return () => {
        troubled.delete(take)
        stop()
      }
    }
  }
}

/** A file's id was for that run only: what comes back has the file's name, and asks where it goes. */
const leftIn = ({ key, text }: { readonly key: string; readonly text: string }): readonly LeftRecovery[] => {
  const found = recoveryFrom(text)
  return found === null ? [] : [{ ...found, key, file: found.file === null ? null : { id: '', name: found.file.name } }]
}

const nameIn = (recovery: Recovery): string => (recovery.file?.name ?? 'design').slice(0, 200)
