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
  const before = (await readdir(folder)).filter((each) => each.endsWith('.json')).sort()
  const last = before.filter((each) => each.startsWith(stem)).at(-1)
  const serial = last === undefined ? 0 : Number(last.slice(stem.length + 1, -'.json'.length)) + 1
  const name = `${stem}-${String(serial).padStart(3, '0')}.json`
  await copyFile(path, join(folder, name))
  const all = [...before, name]
  for (const old of all.slice(0, Math.max(0, all.length - KEPT_VERSIONS))) await rm(join(folder, old), { force: true })
}
