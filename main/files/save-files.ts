import { mkdtemp, rename, rm, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

export interface NamedBytes {
  readonly name: string
  readonly bytes: Uint8Array | string
}

/**
 * Writes all files into a folder or none: each is written whole in a folder beside its place first, then all are moved.
 * Returns their paths. Throws what the file system throws, with the folder as it was: what had been moved is taken away
 * again, and what it replaced put back.
 */
export const saveFiles = async (folder: string, files: readonly NamedBytes[]): Promise<readonly string[]> => {
  const drafts = await mkdtemp(join(folder, '.draft-'))
  const moved: { readonly name: string; readonly replaced: boolean }[] = []
  try {
    for (const { name, bytes } of files) await writeFile(join(drafts, name), bytes)
    for (const { name } of files) {
      const replaced = await standsThere(join(folder, name))
      if (replaced) await rename(join(folder, name), join(drafts, `old ${name}`))
      moved.push({ name, replaced })
      await rename(join(drafts, name), join(folder, name))
    }
    return files.map(({ name }) => join(folder, name))
  } catch (error) {
    for (const { name, replaced } of moved) {
      await rm(join(folder, name), { force: true }).catch(() => undefined)
      if (replaced) await rename(join(drafts, `old ${name}`), join(folder, name)).catch(() => undefined)
    }
    throw error
  } finally {
    await rm(drafts, { recursive: true, force: true })
  }
}

/** Whether a file of this name is there; a folder of this name is not to be replaced. */
const standsThere = async (path: string): Promise<boolean> => {
  const found = await stat(path).catch(() => null)
  if (found?.isDirectory() === true) throw Object.assign(new Error(`${path} is a folder`), { code: 'EISDIR' })
  return found !== null
}
