import { basename, dirname, join } from 'node:path'
import type { FileSystem } from './file-system'

let serial = 0

/** A copy that is there whole or not at all: made beside its place and moved there. Over a file that is there. */
export async function copyWhole(from: string, to: string, disk: FileSystem): Promise<void> {
  serial += 1
  const draft = join(dirname(to), `.${basename(to)}.${process.pid}-${serial}.draft`)
  try {
    await disk.remove(draft)
    await disk.copy(from, draft)
    await disk.rename(draft, to)
  } catch (error) {
    await disk.remove(draft).catch(() => undefined)
    throw error
  }
}
