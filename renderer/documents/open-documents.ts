import { parseDesignText, parseWorkshopText, printDesign, printWorkshop } from '../../shared-model/design'
import type { Answer, FileRef, Host, HostProblem, OpenedFile } from '../host/host'
import { problemText } from '../plan/wording'
import { type FileState, isUnsaved } from '../store/files'
import type { Pair } from '../store/history'
import type { AppStore } from '../store/store'
import { readNewer } from './read-newer'

/** What opening, saving and starting anew do to the store; one place for the question about unsaved changes. */
export interface Documents {
  readonly open: () => Promise<void>
  readonly openRecent: (id: string) => Promise<void>
  readonly take: (file: OpenedFile) => Promise<void>
  readonly start: (pair: Pair) => Promise<void>
  readonly save: (as?: boolean) => Promise<boolean>
  readonly openWorkshop: () => Promise<void>
  readonly saveWorkshop: () => Promise<void>
  readonly close: () => Promise<void>
}

/** `ask` shows the question Save / Don't save / Cancel; `askOverwrite` the one about a file that changed on disk. */
export function documents(
  store: AppStore,
  host: Host,
  ask: () => Promise<Answer>,
  askOverwrite: (name: string) => Promise<boolean>
): Documents {
  const tell = (text: string): void => store.do.look({ notice: { text } })
  const say = (problem: HostProblem): void => {
    if (problem.code !== 'given-up') tell(hostText(problem))
  }

  const save = async (as = false): Promise<boolean> => {
    const { design, files } = store.getState()
    const own = files.designFile?.name ?? fileName(design.title, 'design')
    const name = files.readOnly ? copyName(own) : own
    const wish = {
      kind: 'design',
      file: as || files.readOnly ? null : files.designFile,
      name,
      text: printDesign(design)
    } as const
    let saved = await host.save(wish)
    if (!saved.ok && saved.problem.code === 'file-changed' && (await askOverwrite(saved.problem.name))) {
      saved = await host.save({ ...wish, force: true })
    }
    if (!saved.ok) {
      say(saved.problem)
      return false
    }
    store.do.setFiles({ designFile: saved.value, savedDesign: design, readOnly: false })
    store.do.look({ said: `Saved ${saved.value.name}`, notice: null })
    await host.dropRecovery()
    return true
  }
  const mayLeave = async (): Promise<boolean> => {
    if (!isUnsaved(store.getState())) return true
    const answer = await ask()
    if (answer === 'cancel') return false
    return answer === 'drop' ? true : save()
  }
  const show = (pair: Pair, file: FileRef | null, saved: boolean): void => {
    const files = store.getState().files
    const next: FileState = { ...files, designFile: file, savedDesign: saved ? pair.design : null, readOnly: false }
    store.do.load(pair, next)
  }
  const take = async (file: OpenedFile): Promise<void> => {
    const parsed = parseDesignText(file.text)
    if (!parsed.ok) {
      const newer = readNewer(file.text, parsed.problem)
      if (newer !== null) {
        show({ design: newer.design, workshop: store.getState().workshop }, file.file, true)
        store.do.setFiles({ readOnly: true })
        tell(newerText(file.file.name))
        return
      }
      const { shows } = store.getState().workshop
      const reasons = parsed.problem.slice(0, 3).map((problem) => problemText(problem, shows))
      tell(`${file.file.name} cannot be opened. ${reasons.join(' ')}`)
      return
    }
    show({ design: parsed.value, workshop: store.getState().workshop }, file.file, true)
  }
  const openWith = async (read: () => ReturnType<Host['open']>): Promise<void> => {
    if (!(await mayLeave())) return
    const opened = await read()
    if (opened.ok) await take(opened.value)
    else say(opened.problem)
  }

  return {
    save,
    open: () => openWith(() => host.open('design')),
    openRecent: (id) => openWith(() => host.openRecent(id)),
    take: async (file) => {
      if (await mayLeave()) await take(file)
    },
    start: async (pair) => {
      if (await mayLeave()) show(pair, null, true)
    },
    openWorkshop: async () => {
      const opened = await host.open('workshop')
      if (!opened.ok) return say(opened.problem)
      const parsed = parseWorkshopText(opened.value.text)
      const { shows } = store.getState().workshop
      if (!parsed.ok) {
        const reasons = parsed.problem.slice(0, 3).map((problem) => problemText(problem, shows))
        return tell(`${opened.value.file.name} cannot be opened. ${reasons.join(' ')}`)
      }
      store.do.editWorkshop('open a workshop', () => parsed)
      store.do.setFiles({ workshopFile: opened.value.file, savedWorkshop: parsed.value })
    },
    saveWorkshop: async () => {
      const { workshop, files } = store.getState()
      const name = files.workshopFile?.name ?? fileName(workshop.title, 'workshop')
      const saved = await host.save({ kind: 'workshop', file: files.workshopFile, name, text: printWorkshop(workshop) })
      if (!saved.ok) return say(saved.problem)
      store.do.setFiles({ workshopFile: saved.value, savedWorkshop: workshop })
      store.do.look({ said: `Saved ${saved.value.name}` })
    },
    close: async () => {
      if (await mayLeave()) host.close()
    }
  }
}

/** A title as a file's name: letters, figures and dashes. */
export const fileName = (title: string, kind: 'design' | 'workshop'): string => {
  const plain = title
    .normalize('NFKD')
    .replace(/[^\p{Letter}\p{Number}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .toLowerCase()
  return `${plain === '' ? kind : plain}.${kind}.json`
}

/** A name beside the file's own, so that a file for reading only is not written over by a slip. */
const copyName = (name: string): string => `${name.replace(/(\.design)?\.json$/, '')}-copy.design.json`

const newerText = (name: string): string =>
  `${name} was written by a newer version of this program. It is open for reading: what is new in it is not shown, and the file is never written over. Save writes a copy.`

export const hostText = (problem: HostProblem): string => {
  switch (problem.code) {
    case 'given-up':
      return ''
    case 'file-changed':
      return `${problem.name} was changed by something else since it was opened.`
    case 'file-too-large':
      return `${problem.name} is larger than ${Math.round(problem.mostBytes / 1024 / 1024)} MiB and was not opened.`
    case 'file-failed':
      return `${problem.name === '' ? 'The file' : problem.name}: ${problem.detail}.`
  }
}
