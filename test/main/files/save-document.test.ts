import {
  chmod,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rm,
  stat,
  symlink,
  truncate,
  utimes,
  writeFile
} from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { fileProblem } from '../../../main/files/file-problem'
import { nodeFileSystem } from '../../../main/files/file-system'
import { keepOriginal } from '../../../main/files/keep-original'
import { DOCUMENT_LIMIT, readDocument, stampOf } from '../../../main/files/read-document'
import { saveDocument } from '../../../main/files/save-document'
import { saveFile } from '../../../main/files/save-file'
import { KEPT_VERSIONS, versionsFolder } from '../../../main/files/versions'
import { documentSchema } from '../../../shared-model/design'

let folder = ''
const at = (name: string): string => join(folder, name)
const noon = new Date('2026-03-01T12:00:00Z')

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sillwright-files-'))
})
afterEach(() => rm(folder, { recursive: true, force: true }))

describe('saving a document', () => {
  it('replaces the file whole and leaves nothing beside it but its versions', async () => {
    await writeFile(at('sill.json'), 'old')
    const saved = await saveDocument(at('sill.json'), 'new', stampOf('old'), false, noon)
    expect(saved).toEqual({ ok: true, value: stampOf('new') })
    expect(await readFile(at('sill.json'), 'utf8')).toBe('new')
    expect((await readdir(folder)).sort()).toEqual(['.sill.json.versions', 'sill.json'])
    expect(await readdir(versionsFolder(at('sill.json')))).toEqual(['2026-03-01T12-00-00-000Z-000.json'])
  })

  it('does not overwrite a file that has changed on disk since it was read', async () => {
    await writeFile(at('sill.json'), 'theirs')
    const saved = await saveDocument(at('sill.json'), 'mine', stampOf('old'), false, noon)
    expect(saved).toEqual({ ok: false, problem: { code: 'changed-on-disk', about: 'sill.json' } })
    expect(await readFile(at('sill.json'), 'utf8')).toBe('theirs')
    const forced = await saveDocument(at('sill.json'), 'mine', stampOf('old'), true, noon)
    expect(forced.ok).toBe(true)
  })

  it('says that a file is gone instead of making it anew', async () => {
    const saved = await saveDocument(at('gone.json'), 'mine', stampOf('old'), false, noon)
    expect(saved).toEqual({ ok: false, problem: { code: 'not-found', about: 'gone.json' } })
  })

  it(`keeps the last ${KEPT_VERSIONS} versions, the oldest going first`, async () => {
    await writeFile(at('sill.json'), '0')
    for (let n = 1; n <= KEPT_VERSIONS + 3; n++) {
      await saveDocument(at('sill.json'), String(n), stampOf(String(n - 1)), false, noon)
    }
    const kept = (await readdir(versionsFolder(at('sill.json')))).sort()
    expect(kept).toHaveLength(KEPT_VERSIONS)
    const texts = await Promise.all(kept.map((name) => readFile(join(versionsFolder(at('sill.json')), name), 'utf8')))
    expect(texts).toContain(String(KEPT_VERSIONS + 2))
    expect(texts).not.toContain('0')
  })

  it('leaves the old file as it was when the new one cannot be put in its place', async () => {
    await mkdir(at('sill.json'))
    await writeFile(join(at('sill.json'), 'inside'), 'kept')
    const saved = await saveFile(at('sill.json'), 'new')
    expect(saved.ok).toBe(false)
    expect(await readFile(join(at('sill.json'), 'inside'), 'utf8')).toBe('kept')
    expect(await readdir(folder)).toEqual(['sill.json'])
  })

  it('keeps the permissions of the file, and leaves one alone that nobody may write', async () => {
    await writeFile(at('sill.json'), 'old')
    await chmod(at('sill.json'), 0o600)
    expect((await saveFile(at('sill.json'), 'new')).ok).toBe(true)
    const { mode } = await stat(at('sill.json'))
    // Windows knows read-only and no more.
    expect(mode & (process.platform === 'win32' ? 0o200 : 0o777)).toBe(process.platform === 'win32' ? 0o200 : 0o600)
    await chmod(at('sill.json'), 0o444)
    expect(await saveDocument(at('sill.json'), 'newer', stampOf('new'), true, noon)).toEqual({
      ok: false,
      problem: { code: 'no-permission', about: 'sill.json' }
    })
    expect(await readFile(at('sill.json'), 'utf8')).toBe('new')
    await chmod(at('sill.json'), 0o644)
  })

  it('names a folder that is not there', async () => {
    expect(await saveFile(at('no/such/sill.json'), 'new')).toEqual({
      ok: false,
      problem: { code: 'not-found', about: 'sill.json' }
    })
  })

  it.each([
    ['EACCES', 'no-permission'],
    ['EPERM', 'no-permission'],
    ['EROFS', 'no-permission'],
    ['ENOSPC', 'disk-full'],
    ['EDQUOT', 'disk-full'],
    ['EIO', 'failed']
  ])('says what a system error %s means for the file', (code, meant) => {
    const error = Object.assign(new Error(code), { code })
    expect(fileProblem(error, '/sills/kitchen.json')).toEqual({ code: meant, about: 'kitchen.json' })
  })
})

describe('a document of another schema', () => {
  const older = '{"schema":1,"title":"old"}'
  const current = '{"schema":2,"title":"new"}'

  it('is kept beside itself, as it was, before its first save in the current one', async () => {
    await writeFile(at('sill.json'), older)
    expect((await saveDocument(at('sill.json'), current, stampOf(older), false, noon)).ok).toBe(true)
    expect(await readFile(at('sill.schema-1.json'), 'utf8')).toBe(older)
    expect(await readFile(at('sill.json'), 'utf8')).toBe(current)
    await saveDocument(at('sill.json'), '{"schema":2,"title":"newer"}', stampOf(current), false, noon)
    expect((await readdir(folder)).sort()).toEqual(['.sill.json.versions', 'sill.json', 'sill.schema-1.json'])
  })

  it('is kept under a further number where another original has its name', async () => {
    await writeFile(at('sill.json'), older)
    await writeFile(at('sill.schema-1.json'), 'another')
    expect(await keepOriginal(at('sill.json'), 1)).toBe(at('sill.schema-1-2.json'))
    expect(await keepOriginal(at('sill.json'), 1)).toBe(at('sill.schema-1-2.json'))
    expect(await readFile(at('sill.schema-1.json'), 'utf8')).toBe('another')
    expect(await readFile(at('sill.schema-1-2.json'), 'utf8')).toBe(older)
  })

  it('is not saved at all when the original cannot be kept', async () => {
    await writeFile(at('sill.json'), older)
    const full = Object.assign(new Error('full'), { code: 'ENOSPC' })
    const disk = { ...nodeFileSystem, copy: () => Promise.reject(full) }
    const saved = await saveDocument(at('sill.json'), current, stampOf(older), false, noon, disk)
    expect(saved).toEqual({ ok: false, problem: { code: 'disk-full', about: 'sill.json' } })
    expect(await readFile(at('sill.json'), 'utf8')).toBe(older)
    expect(await readdir(folder)).toEqual(['sill.json'])
  })

  it('is never written over when a newer version of the program wrote it, even when told to', async () => {
    const newer = '{"schema":3,"title":"from next year"}'
    await writeFile(at('sill.json'), newer)
    for (const overwrite of [false, true]) {
      expect(await saveDocument(at('sill.json'), current, stampOf(newer), overwrite, noon)).toEqual({
        ok: false,
        problem: { code: 'newer-schema', about: 'sill.json' }
      })
    }
    expect(await readFile(at('sill.json'), 'utf8')).toBe(newer)
  })

  it.each([
    ['{"schema":1}', 1],
    ['{"schema":12,"x":{}}', 12],
    ['{"schema":1.5}', null],
    ['{"schema":"1"}', null],
    ['{"__proto__":{"schema":9}}', null],
    ['[1]', null],
    ['null', null],
    ['{"schema":', null]
  ])('%s has schema %s', (text, schema) => {
    expect(documentSchema(text)).toBe(schema)
  })
})

describe('a save that was killed', () => {
  it('leaves a draft that the next save of the same file clears away, and no other', async () => {
    const old = new Date(Date.now() - 3_600_000)
    const names = ['.sill.json.77-1.draft', '.sill.json.78-1.draft', '.other.json.77-1.draft']
    for (const name of names) await writeFile(at(name), 'half')
    await utimes(at('.sill.json.77-1.draft'), old, old)
    await utimes(at('.other.json.77-1.draft'), old, old)
    await saveDocument(at('sill.json'), 'new', null, false, new Date())
    expect((await readdir(folder)).sort()).toEqual(['.other.json.77-1.draft', '.sill.json.78-1.draft', 'sill.json'])
  })
})

describe('reading a document', () => {
  it('gives the text and the stamp of what was read', async () => {
    await writeFile(at('sill.json'), '{"é":1}')
    expect(await readDocument(at('sill.json'))).toEqual({
      ok: true,
      value: { text: '{"é":1}', stamp: stampOf('{"é":1}') }
    })
  })

  it('refuses a file over the limit before reading it', async () => {
    await writeFile(at('huge.json'), '')
    await truncate(at('huge.json'), 2 * 1024 ** 3)
    expect(await readDocument(at('huge.json'))).toEqual({
      ok: false,
      problem: { code: 'too-large', about: 'huge.json' }
    })
    await truncate(at('huge.json'), DOCUMENT_LIMIT)
    expect((await readDocument(at('huge.json'))).ok).toBe(true)
  })

  it('refuses a folder, a binary and a file that is not there, each by name', async () => {
    await writeFile(at('binary.json'), Uint8Array.of(0xff, 0xfe, 0x80))
    await symlink(at('nowhere'), at('dangling.json'))
    const code = async (name: string) => {
      const read = await readDocument(at(name))
      return read.ok ? 'ok' : read.problem.code
    }
    expect(await code('.')).toBe('not-a-file')
    expect(await code('binary.json')).toBe('not-text')
    expect(await code('missing.json')).toBe('not-found')
    expect(await code('dangling.json')).toBe('not-found')
  })
})
