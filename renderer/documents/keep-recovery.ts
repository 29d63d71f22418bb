import { printDesign, printWorkshop } from '../../shared-model/design'
import { isDemoWorkshop } from '../frame/demo-choices'
import type { Host } from '../host/host'
import { isUnsaved } from '../store/files'
import type { AppStore } from '../store/store'

/** A change is kept for recovery within two seconds; the wait gathers the changes of one movement. */
const WAIT_MS = 1200

/** Keeps unsaved work beside the files, and the workshop as this machine's own. Returns how to stop. */
export function keepRecovery(store: AppStore, host: Host): () => void {
  let timer: ReturnType<typeof setTimeout> | null = null
  const keep = async (): Promise<void> => {
    timer = null
    const state = store.getState()
    const workshop = printWorkshop(state.workshop)
    try {
      if (!isDemoWorkshop(state.workshop.id)) await host.keepWorkshop(workshop)
      if (!isUnsaved(state)) return
      await host.keepRecovery({
        savedOn: new Date().toISOString(),
        design: printDesign(state.design),
        workshop,
        file: state.files.designFile
      })
    } catch {
      store.do.look({
        notice: { text: 'Work for recovery could not be kept on this machine. Save the file now and then.' }
      })
    }
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
