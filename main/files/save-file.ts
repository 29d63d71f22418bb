import { open, rename, rm } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import type { Reply } from '../bridge/contract'
import { fileProblem } from './file-problem'

let serial = 0

/**
 * Replaces a file whole or not at all: a temporary file in the same folder, written and flushed, renamed over the old
 * one, the folder flushed. Whatever goes wrong before the rename leaves the old file as it was.
 */
export async function saveFile(path: string, bytes: Uint8Array | string): Promise<Reply<null>> {
  serial += 1
  const draft = join(dirname(path), `.${basename(path)}.${process.pid}-${serial}.draft`)
  try {
    const file = await open(draft, 'wx', 0o666)
    try {
      await file.writeFile(bytes)
      await file.sync()
    } finally {
      await file.close()
    }
    await rename(draft, path)
    await flushFolder(dirname(path))
    return { ok: true, value: null }
  } catch (error) {
    await rm(draft, { force: true }).catch(() => undefined)
    return { ok: false, problem: fileProblem(error, path) }
  }
}

/** Makes the rename last through a power cut; Windows keeps no handle on a folder and needs none. */
async function flushFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return
  const handle = await open(folder, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}
