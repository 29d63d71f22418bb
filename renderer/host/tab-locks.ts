/** What one tab of the browser holds so that no other tab takes it too; let go of by itself when the tab ends. */
export interface TabLocks {
  /** True when this tab holds the name from now on, or did; false where another tab has it. */
  readonly hold: (name: string) => Promise<boolean>
  readonly release: (name: string) => void
  /** Whether no other tab holds the name: a tab that is just ending is waited for a moment. */
  readonly free: (name: string) => Promise<boolean>
}

/** A page that is loaded again asks before the one it replaces is quite gone, ms. */
const ENDING_MS = 400

export function tabLocks(locks: LockManager | undefined = navigator.locks): TabLocks {
  const held = new Map<string, () => void>()
  const take = (name: string, options: LockOptions): Promise<boolean> =>
    new Promise((resolve) => {
      const asked = locks?.request(name, options, (lock) => {
        if (lock === null) return resolve(false)
        return new Promise<void>((release) => {
          held.set(name, release)
          resolve(true)
        })
      })
      // No locks in this browser, or none to be had in time.
      if (asked === undefined) resolve(true)
      else asked.catch(() => resolve(false))
    })
  const release = (name: string): void => {
    held.get(name)?.()
    held.delete(name)
  }
  return {
    hold: async (name) => held.has(name) || take(name, { ifAvailable: true }),
    release,
    free: async (name) => {
      if (held.has(name)) return true
      const taken = await take(name, { signal: AbortSignal.timeout(ENDING_MS) })
      if (taken) release(name)
      return taken
    }
  }
}
