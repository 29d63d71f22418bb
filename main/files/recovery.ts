import { mkdir, readdir, readFile, rename, rm } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { z } from 'zod'
import type { Recovered, Reply } from '../bridge/contract'
import { saveFile } from './save-file'

const stored = z.object({ key: z.string(), name: z.string(), changedAt: z.iso.datetime(), text: z.string() })

/** Unsaved work, kept apart from the user's own files. */
export interface Recovery {
  readonly write: (key: string, name: string, text: string, now: Date) => Promise<Reply<null>>
  /** Rejects where the place cannot be looked into: that is not the same as nothing kept. */
  readonly list: () => Promise<readonly Recovered[]>
  readonly drop: (key: string) => Promise<void>
}

/**
 * A recovery place in a folder of the program's own. Newest first; a record that cannot be read is passed over, and moved
 * aside rather than written over.
 */
export function recoveryIn(folder: string): Recovery {
  const place = (key: string): string => join(folder, `${key}.json`)
  return {
    write: async (key, name, text, now) => {
      await mkdir(folder, { recursive: true })
      if ((await record(place(key))) === 'unreadable') {
        await rename(place(key), `${place(key)}.unreadable-${now.toISOString().replace(/[:.]/g, '-')}`)
      }
      return saveFile(place(key), JSON.stringify({ key, name, changedAt: now.toISOString(), text }))
    },
    list: async () => {
      const names = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
        if (error.code === 'ENOENT') return []
        throw error
      })
      const read = await Promise.all(
        names.filter((name) => OWN_NAME.test(name)).map((name) => record(join(folder, name)))
      )
      return read.filter((each) => typeof each === 'object').sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1))
    },
    drop: (key) => rm(place(key), { force: true })
  }
}

/** Names of records are keys: whatever else lies in the folder is none of the program's. */
const OWN_NAME = /^[a-z0-9-]{1,68}\.json$/

async function record(path: string): Promise<Recovered | 'missing' | 'unreadable'> {
  try {
    const parsed = stored.safeParse(JSON.parse(await readFile(path, 'utf8')))
    return parsed.success && `${parsed.data.key}.json` === basename(path) ? parsed.data : 'unreadable'
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'ENOENT' ? 'missing' : 'unreadable'
  }
}
