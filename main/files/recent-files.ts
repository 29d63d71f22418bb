import { readFile } from 'node:fs/promises'
import { z } from 'zod'
import type { DocumentKind } from '../bridge/contract'
import { saveFile } from './save-file'

const LONGEST = 12
const stored = z.array(z.object({ path: z.string(), kind: z.enum(['design', 'workshop']) }))

export interface Recent {
  readonly path: string
  readonly kind: DocumentKind
}

export async function readRecent(listPath: string): Promise<readonly Recent[]> {
  try {
    const parsed = stored.safeParse(JSON.parse(await readFile(listPath, 'utf8')))
    return parsed.success ? parsed.data.slice(0, LONGEST) : []
  } catch {
    return []
  }
}

/** Puts a file at the head of the list. A list that cannot be written is only a lost convenience. */
export async function noteRecent(listPath: string, file: Recent): Promise<void> {
  const others = (await readRecent(listPath)).filter((each) => each.path !== file.path)
  await saveFile(listPath, JSON.stringify([file, ...others].slice(0, LONGEST)))
}
