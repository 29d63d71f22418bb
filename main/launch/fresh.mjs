// Says whether built output still matches the sources it was built from.
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { root } from './install.mjs'

/**
 * A digest over the contents of files and folders below the project's root.
 * @param {readonly string[]} places
 */
export function digestOf(places) {
  const hash = createHash('sha256')
  for (const place of places) add(hash, place)
  return hash.digest('hex').slice(0, 16)
}

/**
 * @param {import('node:crypto').Hash} hash
 * @param {string} place
 */
function add(hash, place) {
  const path = join(root, place)
  if (statSync(path).isDirectory()) {
    for (const name of readdirSync(path).sort()) add(hash, `${place}/${name}`)
    return
  }
  hash.update(`\n${place}\n`).update(readFileSync(path))
}
