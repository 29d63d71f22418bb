import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { packageFolder } from '../../../main/launch/held-packages.mjs'
import { billOfMaterials, notices, shippedPackages } from '../../../main/launch/third-party.mjs'

const read = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8')
const config = JSON.parse(read('build/electron-builder.json'))
const program = JSON.parse(read('package.json'))

/** A schema of others, cut down to what is used here: its `$comment` says from where and how. */
const reference = (name: string): z.ZodType => z.fromJSONSchema(JSON.parse(read(`test/reference/packaging/${name}`)))

const sourcesIn = (folder: URL): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => readFileSync(new URL(name.replaceAll('\\', '/'), folder), 'utf8'))

describe('the installers', () => {
  it('have the fuses blown: no Node by the side door, only the sealed archive, no powers for file addresses', () => {
    expect(config.electronFuses).toEqual({
      runAsNode: false,
      enableCookieEncryption: true,
      enableNodeOptionsEnvironmentVariable: false,
      enableNodeCliInspectArguments: false,
      enableEmbeddedAsarIntegrityValidation: true,
      onlyLoadAppFromAsar: true,
      loadBrowserProcessSpecificV8Snapshot: false,
      grantFileProtocolExtraPrivileges: false
    })
    expect(config.asar).toBe(true)
  })

  it('hold the built program and no package folder', () => {
    expect(config.files).toEqual([
      'out/main/**',
      'out/preload/**',
      'out/renderer/**',
      'package.json',
      '!node_modules/**'
    ])
    expect(program.main).toBe('./out/main/index.js')
  })

  it('are made for the three systems, under one name, with the version of the program', () => {
    expect(config.appId).toBe('org.sillwright.app')
    expect(config.linux.target).toEqual(['AppImage', 'deb'])
    expect([config.win.target, config.mac.target]).toEqual([['nsis'], ['dmg']])
    expect(config.artifactName).toContain('$' + '{version}')
    expect(program.version).toMatch(/^\d+\.\d+\.\d+$/)
    expect(config.publish).toBeNull()
  })

  it('tie design files to the program and bring its picture', () => {
    expect(config.fileAssociations.map(({ ext }: { ext: string }) => ext)).toEqual(['sillwright'])
    // A PNG's width and height stand at bytes 16 and 20 (PNG, third edition, 11.2.1); packagers want 512 px or more.
    const icon = readFileSync(new URL('../../../build/icon.png', import.meta.url))
    expect(icon.readUInt32BE(16)).toBeGreaterThanOrEqual(512)
    expect(icon.readUInt32BE(20)).toBe(icon.readUInt32BE(16))
    // Bytes 24 and 25: 8 bits a channel, colour with transparency (the same, tables 11.1 and 11.2).
    expect([...icon.subarray(24, 26)]).toEqual([8, 6])
  })

  it('are described in words that the packager knows, each with a value that it takes', () => {
    const schema = reference('electron-builder-26.17.0.schema.json')
    expect(schema.safeParse(config).error?.issues).toBeUndefined()
    const wrong = [
      { electronFuse: config.electronFuses },
      { asar: 'yes' },
      { electronFuses: { ...config.electronFuses, runAsNode: 'no' } },
      { linux: { ...config.linux, target: 7 } },
      { nsis: { ...config.nsis, oneClicks: false } },
      { fileAssociations: [{ name: 'Sillwright design' }] }
    ]
    for (const part of wrong) expect(schema.safeParse({ ...config, ...part }).success, JSON.stringify(part)).toBe(false)
  })

  it('find at their place the files that they are told to bring', () => {
    const [notices, bill, licence] = config.extraResources.map(({ from }: { from: string }) => from)
    expect(existsSync(new URL(`../../../${licence}`, import.meta.url))).toBe(true)
    // Written by the packaging itself, before the packager starts.
    const packaging = read('main/launch/package.mjs')
    for (const made of [notices, bill]) {
      expect(made).toMatch(/^out\/notices\/[\w.-]+$/)
      expect(packaging).toContain(`'${made.split('/').at(-1)}'`)
    }
    expect(config.directories.buildResources).toBe('build')
  })

  it('are made by a packager of one pinned version, as are all packages', () => {
    expect(read('main/launch/package.mjs')).toMatch(/'electron-builder@\d+\.\d+\.\d+'/)
    const versions = Object.values({ ...program.dependencies, ...program.devDependencies })
    for (const version of versions) expect(version).toMatch(/^\d+\.\d+\.\d+$/)
  })
})

describe('the bill of materials', () => {
  // The page draws the sheet's pages with a package that only the build tells of: development needs it too.
  const shipped = shippedPackages(['node_modules/pdfjs-dist'])
  const bill = billOfMaterials(shipped, program)

  it('names each package that is shipped and the runtime, with version, licence and digest', () => {
    const names = shipped.map(({ name }) => name)
    expect(names).toEqual([...names].sort())
    for (const name of [...Object.keys(program.dependencies), 'electron']) expect(names).toContain(name)
    for (const name of ['vitest', 'fast-check', 'playwright-core']) expect(names).not.toContain(name)
    for (const { name, version, licence } of shipped) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+/)
      expect(licence, name).not.toBe('')
    }
  })

  it('leaves out nothing that the program imports', () => {
    const names = new Set(shipped.map(({ name }) => name))
    const sources = ['main', 'renderer', 'shared-model'].flatMap((room) =>
      sourcesIn(new URL(`../../../${room}/`, import.meta.url))
    )
    const imported = sources.flatMap((text) => [
      ...text.matchAll(/^(?:import|export|\}).*? from '([@a-z][\w@./:?=-]*)'$|\bimport\('([@a-z][\w@./:-]*)'\)/gm)
    ])
    const packages = imported
      .map(([, one, two]) => one ?? two ?? '')
      .map((path) => path.split('/', path.startsWith('@') ? 2 : 1).join('/'))
    const foreign = [...new Set(packages)].filter((name) => !name.startsWith('node:') && name !== 'vite')
    expect(foreign.length).toBeGreaterThan(8)
    expect(foreign.filter((name) => !names.has(name))).toEqual([])
  })

  it('is what the schema of CycloneDX 1.6 asks for, every licence one of the SPDX list', () => {
    const schema = reference('cyclonedx-1.6.schema.json')
    expect(schema.safeParse(JSON.parse(JSON.stringify(bill))).error?.issues).toBeUndefined()
    const [first] = bill.components
    for (const part of [{ type: 'thing' }, { licenses: [{ license: { id: 'Free' } }] }, { colour: 'green' }])
      expect(schema.safeParse({ ...bill, components: [{ ...first, ...part }] }).success).toBe(false)
  })

  it('is CycloneDX 1.6: one reference a component, digests in hexadecimal, the same bytes each time', () => {
    expect([bill.bomFormat, bill.specVersion]).toEqual(['CycloneDX', '1.6'])
    // The pattern that the specification's JSON Schema gives for a serial number.
    expect(bill.serialNumber).toMatch(/^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/)
    const refs = bill.components.map((each) => each['bom-ref'])
    expect(new Set(refs).size).toBe(refs.length)
    for (const { name, hashes } of bill.components) {
      expect(hashes, name).toHaveLength(1)
      // SHA-512 is 64 bytes.
      expect(hashes?.[0]).toMatchObject({ alg: 'SHA-512', content: expect.stringMatching(/^[0-9a-f]{128}$/) })
    }
    expect(JSON.stringify(billOfMaterials(shippedPackages(['node_modules/pdfjs-dist']), program))).toBe(
      JSON.stringify(bill)
    )
  })

  it('goes with notices that give each licence in full', () => {
    const text = notices(shipped)
    for (const { name, version, licence, folder } of shipped) {
      expect(text).toContain(`${name} ${version} (${licence})`)
      expect(existsSync(new URL(`../../../${folder}`, import.meta.url)), folder).toBe(true)
    }
    // Each under its heading and a rule of hyphens: a text long enough to be a licence.
    const parts = text.split(`${'-'.repeat(72)}\n`).slice(1)
    expect(parts).toHaveLength(shipped.length)
    parts.forEach((part, at) => {
      expect(part.length, shipped[at]?.name).toBeGreaterThan(500)
      if (shipped[at]?.licence === 'MIT') expect(part, shipped[at]?.name).toMatch(/Permission is hereby granted/)
    })
    expect(text).toContain('Bitstream')
  })
})

describe('the package of a module in the build', () => {
  it.each([
    ['/home/grower/sillwright/node_modules/react/index.js', 'node_modules/react'],
    ['C:\\sillwright\\node_modules\\@noble\\hashes\\esm\\sha256.js', 'node_modules/@noble/hashes'],
    ['\0/sillwright/node_modules/pako/dist/pako.mjs?commonjs-proxy', 'node_modules/pako'],
    ['/s/node_modules/pdfkit/node_modules/base64-js/index.js', 'node_modules/pdfkit/node_modules/base64-js'],
    ['/sillwright/renderer/main.tsx', null],
    ['\0vite/preload-helper.js', null]
  ])('%s is of %s', (id, folder) => {
    expect(packageFolder(id)).toBe(folder)
  })
})
