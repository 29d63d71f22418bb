import { basename, dirname } from 'node:path'
import { documentSchema } from '../../shared-model/design'
import type { FileProblem, Reply } from '../bridge/contract'
import { fileProblem } from './file-problem'
import { type FileSystem, nodeFileSystem } from './file-system'
import { keepOriginal } from './keep-original'
import { readDocument, stampOf } from './read-document'
import { saveFile } from './save-file'
import { clearStaleDrafts } from './stale-drafts'
import { keepVersion } from './versions'

/**
 * Saves a document over the file it was read from. `seen` is the stamp of what was read; a file that has changed since
 * is not overwritten unless `overwrite` says so. A file of a newer schema than the text's is never overwritten; one of an
 * older schema is kept beside it first. The version replaced is kept. Answers the new stamp.
 */
export async function saveDocument(
  path: string,
  text: string,
  seen: string | null,
  overwrite: boolean,
  now: Date,
  disk: FileSystem = nodeFileSystem
): Promise<Reply<string>> {
  const refused = (code: FileProblem['code']): Reply<never> => ({ ok: false, problem: { code, about: basename(path) } })
  const before = await readDocument(path)
  const exists = before.ok || before.problem.code !== 'not-found'
  if (seen !== null && !overwrite && !(before.ok && before.value.stamp === seen)) {
    return refused(exists ? 'changed-on-disk' : 'not-found')
  }
  if (before.ok) {
    const [older, newer] = [documentSchema(before.value.text), documentSchema(text)]
    if (older !== null && newer !== null && older > newer) return refused('newer-schema')
    if (older !== null && newer !== null && older < newer) {
      try {
        await keepOriginal(path, older, disk)
      } catch (error) {
        return { ok: false, problem: fileProblem(error, path) }
      }
    }
    // A version that cannot be kept (a folder that takes no new folder) must not cost the grower the save itself.
    await keepVersion(path, now, disk).catch(() => undefined)
  }
  await clearStaleDrafts(dirname(path), basename(path), now, disk).catch(() => undefined)
  const saved = await saveFile(path, text, disk)
  return saved.ok ? { ok: true, value: stampOf(text) } : saved
}
