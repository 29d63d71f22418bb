import { createHash } from 'node:crypto'
import { open } from 'node:fs/promises'
import { basename } from 'node:path'
import type { Reply } from '../bridge/contract'
import { fileProblem } from './file-problem'

/** Largest document read, in bytes. */
export const DOCUMENT_LIMIT = 20 * 1024 * 1024

export interface ReadDocument {
  readonly text: string
  readonly stamp: string
}

/** A text document, its size checked before it is read. */
export async function readDocument(path: string): Promise<Reply<ReadDocument>> {
  const about = basename(path)
  try {
    const file = await open(path, 'r')
    try {
      const stat = await file.stat()
      if (!stat.isFile()) return { ok: false, problem: { code: 'not-a-file', about } }
      if (stat.size > DOCUMENT_LIMIT) return { ok: false, problem: { code: 'too-large', about } }
      const bytes = await file.readFile()
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

function decode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return null
  }
}
