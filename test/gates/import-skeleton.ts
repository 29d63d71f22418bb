import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))
const STATEMENT = /^(?:import|export)\b[^;'"]*?\bfrom '[^']+'|^import '[^']+'|\bimport\('[^']+'\)/gm

/**
 * A copy of a tree in which each `.tsx` file is a `.ts` file with nothing but its imports. The parser that
 * dependency-cruiser has for TypeScript reads no JSX: it would see such a file and none of its arrows.
 */
export function withImportsOnly<T>(
  tree: string,
  places: readonly string[],
  use: (copy: string) => Promise<T>
): Promise<T> {
  const copy = mkdtempSync(join(tmpdir(), 'sillwright-arrows-'))
  for (const path of places.flatMap((place) => filesBelow(join(tree, place)))) {
    const to = join(copy, relative(tree, path))
    mkdirSync(dirname(to), { recursive: true })
    if (path.endsWith('.tsx')) writeFileSync(to.replace(/x$/, ''), importsOf(readFileSync(path, 'utf8')))
    else cpSync(path, to)
  }
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'))
  return use(copy).finally(() => rmSync(copy, { recursive: true }))
}

export function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
}

/** Dynamic imports stand in a function, so that each line is a statement. */
function importsOf(source: string): string {
  const found = source.match(STATEMENT) ?? []
  return found.map((each) => (each.startsWith('import(') ? `;() => ${each}` : each)).join('\n')
}
