import { mkdtemp, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

export interface NamedBytes {
  readonly name: string
  readonly bytes: Uint8Array | string
}

/**
 * Writes all files into a folder or none: each is written whole in a folder beside its place first, then all are moved.
 * Returns their paths. Throws what the file system throws, with nothing half-written left behind.
 */
export const saveFiles = async (folder: string, files: readonly NamedBytes[]): Promise<readonly string[]> => {
  const drafts = await mkdtemp(join(folder, '.draft-'))
  try {
    for (const { name, bytes } of files) await writeFile(join(drafts, name), bytes)
    const paths: string[] = []
    for (const { name } of files) {
      await rename(join(drafts, name), join(folder, name))
      paths.push(join(folder, name))
    }
    return paths
  } finally {
    await rm(drafts, { recursive: true, force: true })
  }
}
