import { parseDesignText, parseWorkshopText } from '../../shared-model/design'
import { ask } from '../frame/ask'
import type { Host } from '../host/host'
import type { AppStore } from '../store/store'
import { RECOVER } from './questions'

/** Offers work that was not saved when the program last ended, with its time. */
export async function offerRecovery(store: AppStore, host: Host): Promise<void> {
  const recovery = await host.readRecovery()
  if (recovery === null) return
  const design = parseDesignText(recovery.design)
  if (!design.ok) return
  const answer = await ask(RECOVER(new Date(recovery.savedOn).toLocaleString()))
  if (answer === 'drop') await host.dropRecovery()
  if (answer !== 'back') return
  const { workshop, files } = store.getState()
  const kept = parseWorkshopText(recovery.workshop)
  store.do.load(
    { design: design.value, workshop: kept.ok ? kept.value : workshop },
    { ...files, designFile: recovery.file, savedDesign: null }
  )
}
