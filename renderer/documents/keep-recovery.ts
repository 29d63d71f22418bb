import { type Design, printDesign, printWorkshop } from '../../shared-model/design'
import { isDemoWorkshop } from '../frame/demo-choices'
import type { Host } from '../host/host'
import { isUnsaved } from '../store/files'
import type { AppStore } from '../store/store'

/** A change is kept for recovery within two seconds; the wait gathers the changes of one movement. */
const WAIT_MS = 1200

const ELSEWHERE =
  'The workshop was changed in another window since. The one shown here is not kept as this machine’s own: save it to a file, or load this page again to go on with the other.'

const NOT_KEPT = 'Work for recovery could not be kept on this machine. Save the file now and then.'

type State = ReturnType<AppStore['getState']>

/** Keeps unsaved work beside the files, and the workshop as this machine's own. Returns how to stop. */
export function keepRecovery(store: AppStore, host: Host): () => void {
  let timer: ReturnType<typeof setTimeout> | null = null
  let told = false
  let printed: { readonly design: Design; readonly text: string } | null = null
  /** The design as it was saved last does not change from one keeping to the next. */
  const savedText = (design: Design | null): string | null => {
    if (design === null) return null
    if (printed?.design !== design) printed = { design, text: printDesign(design) }
    return printed.text
  }
  const keepWorkshop = async (text: string): Promise<void> => {
    const kept = await host.keepWorkshop(text)
    if (!kept && !told) store.do.look({ notice: { text: ELSEWHERE } })
    told = !kept
  }
  const keepOwn = async ({ workshop, files }: State, text: string): Promise<void> => {
    if (!isDemoWorkshop(workshop.id) && !files.workshopReadOnly) await keepWorkshop(text)
  }
  const keepDesign = async (state: State, workshop: string): Promise<void> => {
    // Saved, given up or taken back: there is nothing to bring back.
    if (!isUnsaved(state)) return host.dropRecovery()
    const { designFile, savedDesign } = state.files
    await host.keepRecovery({
      savedOn: new Date().toISOString(),
      design: printDesign(state.design),
      workshop,
      file: designFile,
      saved: savedText(savedDesign)
    })
  }
  const keep = async (): Promise<void> => {
    const state = store.getState()
    // While a hand holds something the documents are not settled, and writing them would hold the hand up.
    if (state.history.held !== null) {
      timer = setTimeout(() => void keep(), WAIT_MS)
      return
    }
    timer = null
    const workshop = printWorkshop(state.workshop)
    // One after the other, each by itself: a workshop that cannot be kept must not cost the design its record.
    const outcomes = [await settled(keepDesign(state, workshop)), await settled(keepOwn(state, workshop))]
    if (outcomes.includes(false)) store.do.look({ notice: { text: NOT_KEPT } })
  }
  const stop = store.subscribe((state, before) => {
    if (isUnsaved(state) !== isUnsaved(before) || state.design.title !== before.design.title) {
      host.setUnsaved(isUnsaved(state), state.design.title)
    }
    if (state.design === before.design && state.workshop === before.workshop) return
    if (timer === null) timer = setTimeout(() => void keep(), WAIT_MS)
  })
  return () => {
    stop()
    if (timer !== null) clearTimeout(timer)
  }
}

const settled = (work: Promise<void>): Promise<boolean> =>
  work.then(
    () => true,
    () => false
  )
