// What is shipped of others' work, from the lockfile: a bill of materials (CycloneDX 1.6) and the notices.
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { heldPackages } from './held-packages.mjs'
import { root } from './install.mjs'
import { mitLicence } from './mit-licence.mjs'

/** Licences of packages that name theirs in their own files only. */
const NAMED_IN_FILES = new Map([
  ['png-js', 'MIT'],
  ['dejavu-fonts-ttf', 'Bitstream-Vera']
])

/** Shipped, though the lockfile counts it among what development needs, and no part of it is bundled. */
const RUNTIME = 'node_modules/electron'

/**
 * @typedef {object} Shipped
 * @property {string} name
 * @property {string} version
 * @property {string} licence SPDX expression
 * @property {string} integrity as the lockfile has it: algorithm, hyphen, base64
 * @property {string} folder below the project's root
 */

/**
 * Every package that the program needs or its build holds parts of, and the runtime it stands on; by name, then version.
 * @param {readonly string[]} held folders of the packages in the build
 * @returns {readonly Shipped[]}
 */
export function shippedPackages(held = heldPackages()) {
  /** @type {{ packages: Record<string, { version?: string, license?: string, integrity?: string, dev?: boolean }> }} */
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'))
  return Object.entries(lock.packages)
    .filter(([folder, { dev }]) => folder !== '' && (dev !== true || folder === RUNTIME || held.includes(folder)))
    .map(([folder, { version = '', license, integrity = '' }]) => {
      const name = folder.slice(folder.lastIndexOf('node_modules/') + 'node_modules/'.length)
      return { name, version, licence: NAMED_IN_FILES.get(name) ?? license ?? '', integrity, folder }
    })
    .filter(({ name }) => !name.startsWith('@types/'))
    .sort((a, b) => order(a.name, b.name) || order(a.version, b.version))
}

/**
 * The bill of materials. The same lockfile gives the same bytes: no time, and a serial number made from the contents.
 * @param {readonly Shipped[]} shipped
 * @param {{ name: string, version: string, license: string }} program
 */
export function billOfMaterials(shipped, program) {
  const components = shipped.map(({ name, version, licence, integrity }) => ({
    type: name === 'electron' ? 'framework' : 'library',
    'bom-ref': packageUrl(name, version),
    name,
    version,
    licenses: [licence.includes(' ') ? { expression: licence } : { license: { id: licence } }],
    purl: packageUrl(name, version),
    ...(integrity === '' ? {} : { hashes: [hashOf(integrity)] })
  }))
  const component = {
    type: 'application',
    'bom-ref': packageUrl(program.name, program.version),
    name: program.name,
    version: program.version,
    licenses: [{ license: { id: program.license } }]
  }
  const digest = createHash('sha256')
    .update(JSON.stringify([component, components]))
    .digest('hex')
  return {
    bomFormat: 'CycloneDX',
    specVersion: '1.6',
    serialNumber: `urn:uuid:${uuidFrom(digest)}`,
    version: 1,
    metadata: { component },
    components
  }
}

/**
 * Each package with its licence in full.
 * @param {readonly Shipped[]} shipped
 */
export function notices(shipped) {
  const parts = shipped.map(({ name, version, licence, folder }) => {
    const carried = licenceTexts(join(root, folder))
    const words = carried.length === 0 ? [namedOnly(name, licence, join(root, folder, 'package.json'))] : carried
    return [`${name} ${version} (${licence})`, '-'.repeat(72), ...words].join('\n')
  })
  const runtime =
    'The Electron runtime brings Chromium, Node.js and others; their licences are in LICENSES.chromium.html beside it.'
  return `Sillwright holds parts of the following works.\n\n${runtime}\n\n${parts.join('\n\n\n')}\n`
}

/**
 * For a package that names its licence and carries no text of it: that licence's own text, with the author as the holder.
 * @param {string} name
 * @param {string} licence
 * @param {string} description path of its package.json
 */
function namedOnly(name, licence, description) {
  if (licence !== 'MIT') throw new Error(`${name} carries no text of its licence ${licence}`)
  const { author } = JSON.parse(readFileSync(description, 'utf8'))
  return mitLicence((typeof author === 'string' ? author : author?.name) ?? `the authors of ${name}`)
}

/** @param {string} folder */
function licenceTexts(folder) {
  if (!existsSync(folder)) return []
  return readdirSync(folder)
    .filter((name) => /^(licen[cs]e|copying|notice)/i.test(name))
    .sort()
    .map((name) => readFileSync(join(folder, name), 'utf8').replaceAll('\r\n', '\n').trim())
}

/**
 * @param {string} name
 * @param {string} version
 */
function packageUrl(name, version) {
  return `pkg:npm/${name.replace('@', '%40')}@${version}`
}

/** @param {string} integrity */
function hashOf(integrity) {
  const [algorithm = '', content = ''] = integrity.split(/-(.*)/s)
  return { alg: algorithm.replace('sha', 'SHA-'), content: Buffer.from(content, 'base64').toString('hex') }
}

/**
 * A version 8 UUID (RFC 9562): its bits are the maker's own, here those of a digest.
 * @param {string} hex
 */
function uuidFrom(hex) {
  const variant = ((Number.parseInt(hex.charAt(16), 16) & 3) | 8).toString(16)
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    variant + hex.slice(17, 20),
    hex.slice(20, 32)
  ].join('-')
}

/**
 * @param {string} a
 * @param {string} b
 */
function order(a, b) {
  return a < b ? -1 : a > b ? 1 : 0
}
