import {
  type DocumentProblem,
  type Edited,
  parseDesignText,
  parseWorkshopText,
  printDesign,
  printWorkshop
} from '../../shared-model/design'
import { ok } from '../../shared-model/outcome'
import type { Answer, DocumentKind, FileRef, Host, HostProblem, OpenedFile, SavedRef } from '../host/host'
import { problemText } from '../plan/wording'
import { type FileState, isUnsaved, NO_WORKSHOP_FILE, OPEN_WORKSHOP } from '../store/files'
import type { Pair } from '../store/history'
import type { AppStore } from '../store/store'
import { keptWithFile } from './keep-with-file'
import { readNewer, readNewerWorkshop } from './read-newer'

/** What opening, saving and starting anew do to the store; one place for the question about unsaved changes. */
export interface Documents {
  readonly open: () => Promise<void>
  readonly openRecent: (id: string) => Promise<void>
  readonly take: (file: OpenedFile) => Promise<void>
  readonly start: (pair: Pair) => Promise<void>
  readonly save: (as?: boolean) => Promise<boolean>
  readonly openWorkshop: () => Promise<void>
  readonly saveWorkshop: () => Promise<void>
  /** A change that the workshop's file has to take with it; what stands in its way is given back and nothing happens. */
  readonly keep: (what: string, change: (pair: Pair) => Edited<Pair>) => Promise<string | null>
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

  /** Saved, after the question about a file that changed on disk where it did. */
  const written = async (wish: Parameters<Host['save']>[0]): ReturnType<Host['save']> => {
    const saved = await host.save(wish)
    const over = !saved.ok && saved.problem.code === 'file-changed' && (await askOverwrite(saved.problem.name))
    return over ? host.save({ ...wish, force: true }) : saved
  }
  const save = async (as = false): Promise<boolean> => {
    const { design, files } = store.getState()
    const own = files.designFile?.name ?? fileName(design.title, 'design')
    const name = files.readOnly ? copyName(own, 'design') : own
    const file = as || files.readOnly ? null : files.designFile
    const saved = await written({ kind: 'design', file, name, text: printDesign(design) })
    if (!saved.ok) {
      say(saved.problem)
      return false
    }
    store.do.setFiles({ designFile: refOf(saved.value), savedDesign: design, readOnly: false })
    store.do.look({ said: `Saved ${saved.value.name}`, notice: originalNotice(saved.value) })
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
    const { files, workshop } = store.getState()
    const next: FileState = { ...files, designFile: file, savedDesign: saved ? pair.design : null, readOnly: false }
    // Another workshop than the one that stood here has no file yet: saving it must not fall on the other's.
    store.do.load(
      pair,
      pair.workshop === workshop ? next : { ...next, ...NO_WORKSHOP_FILE, savedWorkshop: pair.workshop }
    )
  }
  const take = async (file: OpenedFile): Promise<void> => {
    const parsed = parseDesignText(file.text)
    if (!parsed.ok) {
      const newer = readNewer(file.text, parsed.problem)
      if (newer === null) return tell(notOpened(file.file.name, parsed.problem))
      show({ design: newer, workshop: store.getState().workshop }, file.file, true)
      store.do.setFiles({ readOnly: true })
      return tell(newerText(file.file.name))
    }
    show({ design: parsed.value, workshop: store.getState().workshop }, file.copy === true ? null : file.file, true)
    if (file.copy === true) tell(copyText(file.file.name))
  }
  const notOpened = (name: string, problems: readonly DocumentProblem[]): string => {
    const { shows } = store.getState().workshop
    const reasons = problems.slice(0, 3).map((problem) => problemText(problem, shows))
    return `${name} cannot be opened. ${reasons.join(' ')}`
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
      const { file, text, copy } = opened.value
      const parsed = parseWorkshopText(text)
      const newer = parsed.ok ? null : readNewerWorkshop(text, parsed.problem)
      if (!parsed.ok && newer === null) return tell(notOpened(file.name, parsed.problem))
      const workshop = parsed.ok ? parsed.value : newer
      if (workshop === null) return
      store.do.setFiles({ workshopReadOnly: false })
      store.do.editWorkshop(OPEN_WORKSHOP, () => ok(workshop))
      store.do.setFiles({
        workshopFile: copy === true ? null : file,
        savedWorkshop: workshop,
        workshopReadOnly: newer !== null
      })
      if (newer !== null) tell(newerText(file.name))
      else if (copy === true) tell(copyText(file.name))
    },
    saveWorkshop: async () => {
      const { workshop, files } = store.getState()
      const own = files.workshopFile?.name ?? fileName(workshop.title, 'workshop')
      const name = files.workshopReadOnly ? copyName(own, 'workshop') : own
      const file = files.workshopReadOnly ? null : files.workshopFile
      const saved = await written({ kind: 'workshop', file, name, text: printWorkshop(workshop) })
      if (!saved.ok) return say(saved.problem)
      store.do.setFiles({ workshopFile: refOf(saved.value), savedWorkshop: workshop, workshopReadOnly: false })
      store.do.look({ said: `Saved ${saved.value.name}`, notice: originalNotice(saved.value) })
    },
    keep: (what, change) => keptWithFile(store, host, written, hostText, what, change),
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
const copyName = (name: string, kind: DocumentKind): string =>
  `${name.replace(/(\.(design|workshop))?\.(json|sillwright)$/, '')}-copy.${kind}.json`

const refOf = ({ id, name }: SavedRef): FileRef => ({ id, name })

const originalNotice = ({ name, original }: SavedRef): { readonly text: string } | null =>
  original === undefined
    ? null
    : {
        text: `${name} is now in the form of this version. As it was before it is kept as ${original}, and in this browser.`
      }

const copyText = (name: string): string =>
  `${name} is open in another tab. This is a copy: saving it asks for a name of its own.`

const newerText = (name: string): string =>
  `${name} was written by a newer version of this program. It is open for reading only: what is new in it is not shown, nothing can be changed, and the file is never written over. Save makes a copy that can be changed.`

export const hostText = (problem: HostProblem): string => {
  switch (problem.code) {
    case 'given-up':
      return ''
    case 'file-changed':
      return `${problem.name} was changed by something else since it was opened.`
    case 'file-newer':
      return `${problem.name} was written by a newer version of the program and is not written over. Save under another name.`
    case 'file-elsewhere':
      return `${problem.name} is open in another tab or window. Save under another name.`
    case 'file-too-large':
      return `${problem.name} is larger than ${Math.round(problem.mostBytes / 1024 / 1024)} MiB and was not opened.`
    case 'file-failed':
      return `${problem.name === '' ? 'The file' : problem.name}: ${problem.detail}.`
    case 'unreadable':
      return `The program gave an answer that this window cannot read (${problem.about}). What is shown here is as it was, and not taken for saved.`
  }
}
