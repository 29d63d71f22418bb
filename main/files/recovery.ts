import { mkdir, readdir, readFile, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { z } from 'zod'
import type { Recovered, Reply } from '../bridge/contract'
import { saveFile } from './save-file'

const stored = z.object({ key: z.string(), name: z.string(), changedAt: z.string(), text: z.string() })

/** Unsaved work, kept apart from the user's own files. */
export interface Recovery {
  readonly write: (key: string, name: string, text: string, now: Date) => Promise<Reply<null>>
  readonly list: () => Promise<readonly Recovered[]>
  readonly drop: (key: string) => Promise<void>
}

/** A recovery place in a folder of the program's own. Newest first; a record that cannot be read is passed over. */
export function recoveryIn(folder: string): Recovery {
  const place = (key: string): string => join(folder, `${key}.json`)
  return {
    write: async (key, name, text, now) => {
      await mkdir(folder, { recursive: true })
      return saveFile(place(key), JSON.stringify({ key, name, changedAt: now.toISOString(), text }))
    },
    list: async () => {
      const names = await readdir(folder).catch(() => [])
      const read = await Promise.all(
        names.filter((name) => name.endsWith('.json')).map((name) => record(join(folder, name)))
      )
      return read.filter((each) => each !== null).sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1))
    },
    drop: (key) => rm(place(key), { force: true })
  }
}

async function record(path: string): Promise<Recovered | null> {
  try {
    const parsed = stored.safeParse(JSON.parse(await readFile(path, 'utf8')))
    return parsed.success ? parsed.data : null
  } catch {
    return null
  }
}
