import { mkdir, rmdir, stat } from 'node:fs/promises'
import { dirname } from 'node:path'

/**
 * Makes a folder and those above it that are missing, one after the other; gives the topmost that was made, or undefined
 * where all were there. Throws what the file system throws, with nothing left made. Node's own way of making a path goes round without end where
 * a system folder (`/proc`) says of a name in it that its parent is missing; here each name is asked for once.
 */
export async function makeFolder(path: string): Promise<string | undefined> {
  const missing: string[] = []
  for (let at = path; !(await stands(at)); at = dirname(at)) {
    missing.push(at)
    if (dirname(at) === at) break
  }
  const made: string[] = []
  try {
    for (const folder of missing.reverse()) {
      await mkdir(folder)
      made.push(folder)
    }
  } catch (error) {
    for (const folder of made.reverse()) await rmdir(folder).catch(() => undefined)
    throw error
  }
  return made[0]
}

/** Whether a folder is there; a file in its place is an error. */
async function stands(path: string): Promise<boolean> {
  const found = await stat(path).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return null
    throw error
  })
  if (found !== null && !found.isDirectory()) {
    throw Object.assign(new Error(`${path} is a file where a folder is wanted`), { code: 'ENOTDIR' })
  }
  return found !== null
}
