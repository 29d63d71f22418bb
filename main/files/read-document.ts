import { createHash } from 'node:crypto'
import { constants } from 'node:fs'
import { type FileHandle, open } from 'node:fs/promises'
import { basename } from 'node:path'
import type { Reply } from '../bridge/contract'
import { fileProblem } from './file-problem'

/** Largest document read, in bytes. */
export const DOCUMENT_LIMIT = 20 * 1024 * 1024

export interface ReadDocument {
  readonly text: string
  readonly stamp: string
}

/** A named pipe is opened without waiting for its other end. Windows has neither. */
const AT_ONCE = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0)

/** A text document, its size checked before it is read, and again as it is: it may grow meanwhile. */
export async function readDocument(path: string): Promise<Reply<ReadDocument>> {
  const about = basename(path)
  try {
    const file = await open(path, AT_ONCE)
    try {
      const stat = await file.stat()
      if (!stat.isFile()) return { ok: false, problem: { code: 'not-a-file', about } }
      if (stat.size > DOCUMENT_LIMIT) return { ok: false, problem: { code: 'too-large', about } }
      const bytes = await bytesOf(file, stat.size)
      if (bytes === null) return { ok: false, problem: { code: 'too-large', about } }
      const text = decode(bytes)
      if (text === null) return { ok: false, problem: { code: 'not-text', about } }
      return { ok: true, value: { text, stamp: stampOf(bytes) } }
    } finally {
      await file.close()
    }
  } catch (error) {
    return { ok: false, problem: fileProblem(error, path) }
  }
}

/** What a file's contents were: a save that finds another stamp on disk does not overwrite. */
export function stampOf(bytes: Uint8Array | string): string {
  return createHash('sha256').update(bytes).digest('hex')
}

/** All bytes of a file that is said to have so many, null where there are more than may be read. */
async function bytesOf(file: FileHandle, expected: number): Promise<Uint8Array | null> {
  let buffer = Buffer.allocUnsafe(Math.min(expected, DOCUMENT_LIMIT) + 1)
  let length = 0
  for (;;) {
    const { bytesRead } = await file.read(buffer, length, buffer.length - length, length)
    if (bytesRead === 0) return buffer.subarray(0, length)
    length += bytesRead
    if (length > DOCUMENT_LIMIT) return null
    if (length === buffer.length) buffer = Buffer.concat([buffer, Buffer.allocUnsafe(length)])
  }
}

function decode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return null
  }
}
