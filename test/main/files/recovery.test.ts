import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { designFileName, documentArgument } from '../../../main/files/document-argument'
import { fileIds } from '../../../main/files/file-ids'
import { noteRecent, readRecent } from '../../../main/files/recent-files'
import { recoveryIn } from '../../../main/files/recovery'
import { windowsToRecover } from '../../../main/files/recovery-slot'

let folder = ''
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sillwright-recovery-'))
})
afterEach(() => rm(folder, { recursive: true, force: true }))

describe('recovery of unsaved work', () => {
  it('gives back what was written, newest first, until it is dropped', async () => {
    const recovery = recoveryIn(join(folder, 'recovery'))
    expect(await recovery.list()).toEqual([])
    await recovery.write('one', 'Kitchen', '{"a":1}', new Date('2026-03-01T10:00:00Z'))
    await recovery.write('two', 'Hall', '{"b":2}', new Date('2026-03-01T11:00:00Z'))
    await recovery.write('one', 'Kitchen', '{"a":3}', new Date('2026-03-01T12:00:00Z'))
    expect(await recovery.list()).toEqual([
      { key: 'one', name: 'Kitchen', text: '{"a":3}', changedAt: '2026-03-01T12:00:00.000Z' },
      { key: 'two', name: 'Hall', text: '{"b":2}', changedAt: '2026-03-01T11:00:00.000Z' }
    ])
    await recovery.drop('one')
    await recovery.drop('never-there')
    expect((await recovery.list()).map((each) => each.key)).toEqual(['two'])
  })

  it('passes over a record that was cut off', async () => {
    const recovery = recoveryIn(folder)
    await recovery.write('one', 'Kitchen', '{}', new Date('2026-03-01T10:00:00Z'))
    await writeFile(join(folder, 'torn.json'), '{"key":"torn","na')
    expect((await recovery.list()).map((each) => each.key)).toEqual(['one'])
  })

  it('passes over a record whose key is another’s, and what is no record of the program’s', async () => {
    const recovery = recoveryIn(folder)
    const record = JSON.stringify({ key: 'design-1', name: 'n', changedAt: '2026-03-01T10:00:00.000Z', text: '{}' })
    for (const name of ['design-1.json', 'design-2.json', 'Design 3.json', 'design-1.json.unreadable-x']) {
      await writeFile(join(folder, name), record)
    }
    expect((await recovery.list()).map((each) => each.key)).toEqual(['design-1'])
  })

  it('moves a record that it cannot read aside rather than write over it', async () => {
    const recovery = recoveryIn(folder)
    await writeFile(join(folder, 'workshop.json'), '{"key":"workshop","na')
    await recovery.write('workshop', 'Workshop', '{}', new Date('2026-03-01T10:00:00Z'))
    expect((await recovery.list()).map((each) => each.text)).toEqual(['{}'])
    const aside = 'workshop.json.unreadable-2026-03-01T10-00-00-000Z'
    expect((await readdir(folder)).sort()).toEqual(['workshop.json', aside])
    expect(await readFile(join(folder, aside), 'utf8')).toBe('{"key":"workshop","na')
  })

  it('does not take a place that it cannot look into for an empty one', async () => {
    await writeFile(join(folder, 'recovery'), 'a file where the folder should be')
    const recovery = recoveryIn(join(folder, 'recovery'))
    await expect(recovery.list()).rejects.toThrow('ENOTDIR')
    expect(await windowsToRecover(recovery)).toEqual([1])
  })
})

describe('recent files', () => {
  it('are listed newest first, each once, a dozen at most', async () => {
    const list = join(folder, 'recent.json')
    for (let n = 0; n < 15; n++) await noteRecent(list, { path: `/sills/${n}.json`, kind: 'design' })
    await noteRecent(list, { path: '/sills/10.json', kind: 'design' })
    const recent = await readRecent(list)
    expect(recent).toHaveLength(12)
    expect(recent.slice(0, 2).map((each) => each.path)).toEqual(['/sills/10.json', '/sills/14.json'])
  })

  it('start afresh where the list cannot be read', async () => {
    await writeFile(join(folder, 'recent.json'), '[{"path":7}]')
    expect(await readRecent(join(folder, 'recent.json'))).toEqual([])
  })
})

describe('names for files', () => {
  it('stand for one path each and for no path that was not handed out', () => {
    const ids = fileIds()
    const sill = ids.of('/sills/kitchen.json')
    expect(ids.of('/sills/kitchen.json')).toBe(sill)
    expect(ids.of('/sills/hall.json')).not.toBe(sill)
    expect(ids.path(sill)).toBe('/sills/kitchen.json')
    expect(ids.path('/etc/passwd')).toBeNull()
  })

  it('are found on a command line among its switches', () => {
    expect(documentArgument(['--flag', '.', 'My sill.Sillwright.json'])).toBe('My sill.Sillwright.json')
    expect(documentArgument(['.', 'Kitchen.SILLWRIGHT'])).toBe('Kitchen.SILLWRIGHT')
    expect(documentArgument(['.', '--open=x.sillwright.json', 'notes.json'])).toBeNull()
  })

  it.each([
    ['kitchen.design.json', 'kitchen.sillwright'],
    ['kitchen.sillwright', 'kitchen.sillwright'],
    ['kitchen.sillwright.json', 'kitchen.sillwright'],
    ['kitchen.json', 'kitchen.sillwright'],
    ['kitchen', 'kitchen.sillwright'],
    ['.json', 'design.sillwright']
  ])('of designs that the page calls %s are %s on the desktop', (suggested, name) => {
    expect(designFileName(suggested)).toBe(name)
  })
})
