import { basename, dirname, join } from 'node:path'
import type { FileSystem } from './file-system'

/** A draft untouched for this long belongs to no save that is still going on, on this machine or another. */
const STALE_MS = 60_000

/** Clears away what a save of this file left behind when the program was killed in the middle of it. */
export async function clearStaleDrafts(path: string, now: Date, disk: FileSystem): Promise<void> {
  const folder = dirname(path)
  const start = `.${basename(path)}.`
  for (const name of await disk.names(folder)) {
    if (!name.startsWith(start) || !/^\d+-\d+\.draft$/.test(name.slice(start.length))) continue
    const draft = join(folder, name)
    if (now.getTime() - (await disk.writtenAt(draft)) > STALE_MS) await disk.remove(draft)
  }
}
