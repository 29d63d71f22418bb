import { documentSchema } from '../../shared-model/design'
import { download } from './download'
import { MOST_FILE_BYTES } from './host'
import type { KeptValues } from './kept-values'

/**
 * Looks at what stands in a file before it is written over: one of a newer schema is `newer`, and must not be; the text of
 * one of an older schema is kept in the browser's database and given out as a download, since a page may not write beside
 * the file, and the download's name is the answer. null: nothing to keep.
 */
export async function keptBefore(
  handle: Pick<FileSystemFileHandle, 'name' | 'getFile'>,
  text: string,
  kept: Pick<KeptValues, 'put'>,
  give: typeof download = download
): Promise<'newer' | { readonly original: string } | null> {
  const there = await handle.getFile()
  if (there.size === 0 || there.size > MOST_FILE_BYTES) return null
  const before = await there.text()
  const [was, is] = [documentSchema(before), documentSchema(text)]
  if (was === null || is === null || was === is) return null
  if (was > is) return 'newer'
  const original = originalName(handle.name, was)
  await kept.put(`original:${original}:${new Date().toISOString()}`, before)
  await give(original, 'application/json', before)
  return { original }
}

/** The schema before the ending: `sill.design.json` of schema 1 is kept as `sill.design.schema-1.json`. */
const originalName = (name: string, schema: number): string => {
  const dot = name.lastIndexOf('.')
  return dot <= 0 ? `${name}.schema-${schema}` : `${name.slice(0, dot)}.schema-${schema}${name.slice(dot)}`
}
