import { basename } from 'node:path'
import type { Reply } from '../bridge/contract'
import { readDocument, stampOf } from './read-document'
import { saveFile } from './save-file'
import { keepVersion } from './versions'

/**
 * Saves a document over the file it was read from. `seen` is the stamp of what was read; a file that has changed since
 * is not overwritten unless `overwrite` says so. The version replaced is kept. Answers the new stamp.
 */
export async function saveDocument(
  path: string,
  text: string,
  seen: string | null,
  overwrite: boolean,
  now: Date
): Promise<Reply<string>> {
  const before = await readDocument(path)
  const exists = before.ok || before.problem.code !== 'not-found'
  if (seen !== null && !overwrite && !(before.ok && before.value.stamp === seen)) {
    return { ok: false, problem: { code: exists ? 'changed-on-disk' : 'not-found', about: basename(path) } }
  }
  // A version that cannot be kept (a folder that takes no new folder) must not cost the grower the save itself.
  if (before.ok) await keepVersion(path, now).catch(() => undefined)
  const saved = await saveFile(path, text)
  return saved.ok ? { ok: true, value: stampOf(text) } : saved
}
