import { mkdir, mkdtemp, readdir, readFile, rm, symlink, truncate, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { fileProblem } from '../../../main/files/file-problem'
import { DOCUMENT_LIMIT, readDocument, stampOf } from '../../../main/files/read-document'
import { saveDocument } from '../../../main/files/save-document'
import { saveFile } from '../../../main/files/save-file'
import { KEPT_VERSIONS, versionsFolder } from '../../../main/files/versions'

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
