import { join } from 'node:path'
import type { FileSystem } from './file-system'

/** A draft untouched for this long belongs to no save that is still going on, on this machine or another. */
const STALE_MS = 60_000

/**
 * Clears away what was left in a folder when the program was killed in the middle of a save: drafts of the file of this
 * name, or of any where it is null.
 */
export async function clearStaleDrafts(folder: string, of: string | null, now: Date, disk: FileSystem): Promise<void> {
  for (const name of await disk.names(folder)) {
    const [, file] = /^\.(.+)\.\d+-\d+\.draft$/.exec(name) ?? []
    if (file === undefined || (of !== null && file !== of)) continue
    const draft = join(folder, name)
    if (now.getTime() - (await disk.writtenAt(draft)) > STALE_MS) await disk.remove(draft)
  }
}
