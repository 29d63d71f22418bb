import { copyFile, open, readdir, rename, rm, stat } from 'node:fs/promises'
import { makeFolder } from './make-folder'

/** A file being written. */
export interface OpenDraft {
  readonly writeFile: (bytes: Uint8Array | string) => Promise<void>
  readonly sync: () => Promise<void>
  readonly close: () => Promise<void>
}

/** The part of the file system that saving uses, so that a proof can let each step of it fail. */
export interface FileSystem {
  /** A new file with these permissions, or the usual ones where they are null; an error when the name is taken. */
  readonly create: (path: string, mode: number | null) => Promise<OpenDraft>
  /** The permissions of a file, or null where there is none. */
  readonly modeOf: (path: string) => Promise<number | null>
  readonly rename: (from: string, to: string) => Promise<void>
  readonly remove: (path: string) => Promise<void>
  /** Copies a file; an error when the name is taken. */
  readonly copy: (from: string, to: string) => Promise<void>
  readonly makeFolder: (path: string) => Promise<void>
  readonly names: (folder: string) => Promise<readonly string[]>
  /** When a file was last written, ms. */
  readonly writtenAt: (path: string) => Promise<number>
  /** Makes the names in a folder last through a power cut. */
  readonly flushFolder: (folder: string) => Promise<void>
}

/** `COPYFILE_EXCL`: never over a file that is there. */
const ONLY_NEW = 1

export const nodeFileSystem: FileSystem = {
  create: async (path, mode) => {
    const file = await open(path, 'wx', mode ?? 0o666)
    // The account's usual mask has been taken off what was asked for: a file keeps the permissions it had.
    if (mode !== null) await file.chmod(mode).catch(() => undefined)
    return file
  },
  modeOf: (path) =>
    stat(path).then(
      (found) => found.mode & 0o777,
      () => null
    ),
  rename,
  remove: (path) => rm(path, { force: true }),
  copy: (from, to) => copyFile(from, to, ONLY_NEW),
  makeFolder: async (path) => {
    await makeFolder(path)
  },
  names: (folder) => readdir(folder),
  writtenAt: async (path) => (await stat(path)).mtimeMs,
  flushFolder: async (folder) => {
    // Windows keeps no handle on a folder and needs none.
    if (process.platform === 'win32') return
    const handle = await open(folder, 'r')
    try {
      await handle.sync()
    } finally {
      await handle.close()
    }
  }
}
