import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { billOfMaterials, notices, shippedPackages } from '../../../main/launch/third-party.mjs'

const read = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8')
const config = JSON.parse(read('build/electron-builder.json'))
const program = JSON.parse(read('package.json'))

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
  })

  it('are made by a packager of one pinned version, as are all packages', () => {
    expect(read('main/launch/package.mjs')).toMatch(/'electron-builder@\d+\.\d+\.\d+'/)
    const versions = Object.values({ ...program.dependencies, ...program.devDependencies })
    for (const version of versions) expect(version).toMatch(/^\d+\.\d+\.\d+$/)
  })
})

describe('the bill of materials', () => {
  const shipped = shippedPackages()
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
    expect(JSON.stringify(billOfMaterials(shippedPackages(), program))).toBe(JSON.stringify(bill))
  })

  it('goes with notices that give each licence in full', () => {
    const text = notices(shipped)
    for (const { name, version, licence, folder } of shipped) {
      expect(text).toContain(`${name} ${version} (${licence})`)
      expect(existsSync(new URL(`../../../${folder}`, import.meta.url)), folder).toBe(true)
    }
    expect(text).toContain('Permission is hereby granted')
    expect(text).toContain('Bitstream')
  })
})
