import { readFile, realpath } from 'node:fs/promises'
import { join, normalize, sep } from 'node:path'
import { contentType } from './page-policy'

export interface PageFile {
  readonly bytes: Uint8Array
  readonly type: string
}

/**
 * One file of the built page, by the path part of its address. Null for anything outside the folder (links resolved),
 * of a kind that the page has no use for, or not there.
 */
export async function pageFile(folder: string, pathname: string): Promise<PageFile | null> {
  const decoded = decode(pathname)
  if (decoded === null || decoded.includes('\0')) return null
  const wanted = normalize(join(folder, decoded === '/' ? 'index.html' : decoded))
  const type = contentType(wanted)
  if (type === null) return null
  try {
    const home = await realpath(folder)
    const path = await realpath(wanted)
    if (!path.startsWith(home + sep)) return null
    return { bytes: await readFile(path), type }
  } catch {
    return null
  }
}

function decode(pathname: string): string | null {
  try {
    return decodeURIComponent(pathname)
  } catch {
    return null
  }
}
