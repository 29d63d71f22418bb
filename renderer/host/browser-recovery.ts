import type { Host, LeftRecovery } from './host'
import type { KeptValues } from './kept-values'
import { isRecovery } from './recovery'
import type { TabLocks } from './tab-locks'

/** Each run keeps its work under a key of its own, and holds a lock of that name while it runs. */
const RECOVERY = 'recovery'
const WORKSHOP = 'workshop'
const ASIDE = 'set-aside'

type Recovering = Pick<
  Host,
  'keepRecovery' | 'leftRecoveries' | 'dropRecovery' | 'keepWorkshop' | 'readWorkshop' | 'setAside'
>

/** Recovery in the browser's database: several tabs keep theirs side by side. */
export function browserRecovery(kept: KeptValues, locks: TabLocks): Recovering {
  const own = `${RECOVERY}:${crypto.randomUUID()}`
  const holding = locks.hold(own)
  /** The workshop as this tab last saw it kept. */
  let seen: string | undefined
  const left = async (key: string): Promise<LeftRecovery | null> => {
    const found = await kept.get(key)
    return isRecovery(found) && (await locks.free(key)) ? { ...found, key } : null
  }
  return {
    keepRecovery: async (recovery) => {
      await holding
      await kept.put(own, recovery)
    },
    leftRecoveries: async () => {
      const keys = await kept.keys().catch(() => [])
      const ofRuns = keys.filter((key) => key !== own && (key === RECOVERY || key.startsWith(`${RECOVERY}:`)))
      const found = (await Promise.all(ofRuns.map(left))).filter((each) => each !== null)
      return found.sort((a, b) => (a.savedOn < b.savedOn ? 1 : -1))
    },
    dropRecovery: (key = own) => kept.drop(key),
    keepWorkshop: async (text) => {
      const swapped = await kept.swap(WORKSHOP, seen, text)
      if (swapped) seen = text
      return swapped
    },
    readWorkshop: async () => {
      const found = await kept.get(WORKSHOP).catch(() => undefined)
      seen = typeof found === 'string' ? found : undefined
      return seen ?? null
    },
    setAside: (text) => kept.put(`${ASIDE}:${new Date().toISOString()}`, text)
  }
}
