import { basename, dirname, extname, join } from 'node:path'
import { copyWhole } from './copy-whole'
import { type FileSystem, nodeFileSystem } from './file-system'
import { readDocument } from './read-document'

/**
 * Copies a document of an older schema beside itself, its schema in the name, before its first save in the current one.
 * A copy with the same contents is enough; one with others is left alone and the next free number taken. Throws what the
 * file system throws: without the copy there is no save. Answers the copy's path.
 */
export async function keepOriginal(path: string, schema: number, disk: FileSystem = nodeFileSystem): Promise<string> {
  const original = await readDocument(path)
  const ending = extname(path)
  const stem = join(dirname(path), `${basename(path, ending)}.schema-${schema}`)
  for (let number = 1; ; number += 1) {
    const kept = `${stem}${number === 1 ? '' : `-${number}`}${ending}`
    const there = await readDocument(kept)
    if (there.ok && original.ok && there.value.stamp === original.value.stamp) return kept
    if (!there.ok && there.problem.code === 'not-found') {
      await copyWhole(path, kept, disk)
      return kept
    }
  }
}
