import type { Recovery } from './recovery'

/** Kept once for the machine, whichever window writes it. */
const SHARED = 'workshop'
const SLOT = /-w(\d{1,3})$/

/**
 * One window's part of the recovery place: what window 2 keeps never falls on what window 1 keeps. Windows are numbered
 * from 1, the lowest number that is free, so that after a crash each finds its own.
 */
export function recoveryForWindow(recovery: Recovery, window: number): Recovery {
  const stored = (key: string): string => (window === 1 || key === SHARED ? key : `${key}-w${window}`)
  return {
    write: (key, name, text, now) => recovery.write(stored(key), name, text, now),
    list: async () =>
      (await recovery.list())
        .filter(({ key }) => key === SHARED || windowOf(key) === window)
        .map((each) => ({ ...each, key: each.key.replace(SLOT, '') })),
    drop: (key) => recovery.drop(stored(key))
  }
}

/** The windows that left work behind, in order; the first window is always among them. */
export async function windowsToRecover(recovery: Recovery): Promise<readonly number[]> {
  const all = await recovery.list().catch(() => [])
  const left = all.filter(({ key }) => !key.startsWith(SHARED)).map(({ key }) => windowOf(key))
  return [...new Set([1, ...left])].sort((a, b) => a - b)
}

const windowOf = (key: string): number => Number(SLOT.exec(key)?.[1] ?? 1)
