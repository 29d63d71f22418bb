import { basename, dirname, join } from 'node:path'
import { copyWhole } from './copy-whole'
import { type FileSystem, nodeFileSystem } from './file-system'
import { clearStaleDrafts } from './stale-drafts'

/** How many earlier versions of a document are kept. */
export const KEPT_VERSIONS = 10

/** Where earlier versions of a document are kept: a hidden folder beside it. */
export const versionsFolder = (path: string): string => join(dirname(path), `.${basename(path)}.versions`)

/** Copies the document as it stands into its versions before it is replaced, and lets the oldest go. */
export async function keepVersion(path: string, now: Date, disk: FileSystem = nodeFileSystem): Promise<void> {
  const folder = versionsFolder(path)
  await disk.makeFolder(folder)
  await clearStaleDrafts(folder, null, now, disk)
  const stem = now.toISOString().replace(/[:.]/g, '-')
  const before = (await disk.names(folder)).filter((each) => each.endsWith('.json')).sort()
  const last = before.filter((each) => each.startsWith(stem)).at(-1)
  const serial = last === undefined ? 0 : Number(last.slice(stem.length + 1, -'.json'.length)) + 1
  const name = `${stem}-${String(serial).padStart(3, '0')}.json`
  await copyWhole(path, join(folder, name), disk)
  const all = [...before, name]
  for (const old of all.slice(0, Math.max(0, all.length - KEPT_VERSIONS))) await disk.remove(join(folder, old))
}
