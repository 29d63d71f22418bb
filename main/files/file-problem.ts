import { basename } from 'node:path'
import type { FileProblem } from '../bridge/contract'

const CODES: Readonly<Record<string, FileProblem['code']>> = {
  ENOENT: 'not-found',
  ENOTDIR: 'not-found',
  ELOOP: 'not-found',
  ENAMETOOLONG: 'not-found',
  EISDIR: 'not-a-file',
  EACCES: 'no-permission',
  EPERM: 'no-permission',
  EROFS: 'no-permission',
  ENOSPC: 'disk-full',
  EDQUOT: 'disk-full',
  EFBIG: 'too-large'
}

/** A system error about a file as a problem that names the file. */
export function fileProblem(error: unknown, path: string): FileProblem {
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  return { code: CODES[code] ?? 'failed', about: basename(path) }
}
