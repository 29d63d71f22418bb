import { type Design, parseDesignText, parseWorkshopText } from '../../shared-model/design'
import { ask } from '../frame/ask'
import type { Host, LeftRecovery } from '../host/host'
import { NO_WORKSHOP_FILE } from '../store/files'
import type { AppStore } from '../store/store'
import { designDifference } from './difference'
import { fileName } from './open-documents'
import { RECOVER, UNREADABLE } from './questions'

/** Offers work that was not saved when an earlier run ended, newest first, with its time and what its file lacks of it. */
export async function offerRecovery(store: AppStore, host: Host): Promise<void> {
  const all = await host.leftRecoveries().catch(() => null)
  if (all === null) return store.do.look({ notice: { text: NOT_READ } })
  for (const left of all) {
    const design = parseDesignText(left.design)
    if (!design.ok) await saveUnreadable(host, left)
    else if (await offered(store, host, left, design.value)) return
  }
}

const NOT_READ =
  'Whether an earlier run left unsaved work could not be read. If it did, it is still kept, and is asked about at the next start.'

/** True when it was brought back: what else was left is asked about next time. */
async function offered(store: AppStore, host: Host, left: LeftRecovery, design: Design): Promise<boolean> {
  const name = left.file?.name ?? `“${design.title}”`
  const answer = await ask(RECOVER(timeOf(left), name, differenceOf(left, design)))
  if (answer === 'drop') await host.dropRecovery(left.key)
  if (answer !== 'back') return false
  const { workshop, files } = store.getState()
  const kept = parseWorkshopText(left.workshop)
  store.do.load(
    { design, workshop: kept.ok ? kept.value : workshop },
    { ...files, ...(kept.ok ? NO_WORKSHOP_FILE : {}), designFile: left.file, savedDesign: null, readOnly: false }
  )
  // Its old record goes only once this run keeps it.
  const { key, ...recovery } = left
  await host.keepRecovery(recovery)
  await host.dropRecovery(key)
  return true
}

async function saveUnreadable(host: Host, left: LeftRecovery): Promise<void> {
  if ((await ask(UNREADABLE(timeOf(left)))) !== 'save') return
  const name = left.file?.name ?? fileName('recovered', 'design')
  const saved = await host.save({ kind: 'design', file: null, name, text: left.design })
  if (saved.ok) await host.dropRecovery(left.key)
}

const timeOf = ({ savedOn }: LeftRecovery): string => new Date(savedOn).toLocaleString()

const differenceOf = ({ saved, file }: LeftRecovery, design: Design): string => {
  const before = saved === null || saved === undefined ? null : parseDesignText(saved)
  if (before === null || !before.ok) return 'It stands in no file.'
  const difference = designDifference(before.value, design)
  const holder = file === null ? 'the design it began with' : 'its file'
  return difference === '' ? `It is the same as ${holder}.` : `Against ${holder}: ${difference}.`
}
