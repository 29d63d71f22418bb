import { basename, dirname, join } from 'node:path'
import type { Reply } from '../bridge/contract'
import { fileProblem } from './file-problem'
import { type FileSystem, nodeFileSystem } from './file-system'

let serial = 0
const ANYONE_WRITES = 0o222

/**
 * Replaces a file whole or not at all: a temporary file in the same folder, written and flushed, renamed over the old
 * one, the folder flushed. Whatever goes wrong before the rename leaves the old file as it was. The new file has the old
 * one's permissions, and a file that nobody may write is left alone.
 */
export async function saveFile(
  path: string,
  bytes: Uint8Array | string,
  disk: FileSystem = nodeFileSystem
): Promise<Reply<null>> {
  const mode = await disk.modeOf(path)
  // A folder lets a file be replaced that itself may not be written: who locked it meant it.
  if (mode !== null && (mode & ANYONE_WRITES) === 0) {
    return { ok: false, problem: { code: 'no-permission', about: basename(path) } }
  }
  serial += 1
  const draft = join(dirname(path), `.${basename(path)}.${process.pid}-${serial}.draft`)
  try {
    const file = await disk.create(draft, mode)
    try {
      await file.writeFile(bytes)
      await file.sync()
    } finally {
      await file.close()
    }
    await disk.rename(draft, path)
  } catch (error) {
    await disk.remove(draft).catch(() => undefined)
    return { ok: false, problem: fileProblem(error, path) }
  }
  // The new file stands in its place by now: a folder that cannot be flushed takes nothing back.
  await disk.flushFolder(dirname(path)).catch(() => undefined)
  return { ok: true, value: null }
}
