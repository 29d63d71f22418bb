// Which packages the built program holds parts of, as the bundler saw it: written down at each build, read for the notices.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { root } from './install.mjs'

const list = join(root, 'out', 'held-packages.json')

/**
 * A plugin that writes down the folder of every package with a module in the build. One for all parts of the program: the
 * list grows with each of them, in whatever order they are built.
 */
export function writeHeldPackages() {
  /** @type {Set<string>} */
  const held = new Set()
  return {
    name: 'write-held-packages',
    /** @this {{ getModuleIds: () => IterableIterator<string> }} */
    generateBundle() {
      for (const id of this.getModuleIds()) {
        const folder = packageFolder(id)
        if (folder !== null) held.add(folder)
      }
      mkdirSync(dirname(list), { recursive: true })
      writeFileSync(list, `${JSON.stringify([...held].sort(), null, 2)}\n`)
    }
  }
}

/**
 * Folders below the project's root; empty where nothing has been built yet.
 * @returns {readonly string[]}
 */
export function heldPackages() {
  return existsSync(list) ? JSON.parse(readFileSync(list, 'utf8')) : []
}

/**
 * The folder of the package that a module belongs to, written as the lockfile does; null for a module of the program's own.
 * @param {string} id
 */
export function packageFolder(id) {
  const found = /(node_modules\/(?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+)\//.exec(id.replaceAll('\\', '/'))
  return found?.[1] ?? null
}
