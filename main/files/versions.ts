import { copyFile, mkdir, readdir, rm } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'

/** How many earlier versions of a document are kept. */
export const KEPT_VERSIONS = 10

/** Where earlier versions of a document are kept: a hidden folder beside it. */
export const versionsFolder = (path: string): string => join(dirname(path), `.${basename(path)}.versions`)

/** Copies the document as it stands into its versions before it is replaced, and lets the oldest go. */
export async function keepVersion(path: string, now: Date): Promise<void> {
  const folder = versionsFolder(path)
  await mkdir(folder, { recursive: true })
  const stem = now.toISOString().replace(/[:.]/g, '-')
  const taken = new Set(await readdir(folder))
  const numbered = (n: number): string => `${stem}-${String(n).padStart(3, '0')}.json`
  let serial = 0
  while (taken.has(numbered(serial))) serial += 1
  const name = numbered(serial)
  await copyFile(path, join(folder, name))
  const all = [...taken, name].filter((each) => each.endsWith('.json')).sort()
  for (const old of all.slice(0, Math.max(0, all.length - KEPT_VERSIONS))) await rm(join(folder, old), { force: true })
}
