import { spawnSync } from 'node:child_process'
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'rolldown'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type FileSystem, nodeFileSystem } from '../../main/files/file-system'
import { stampOf } from '../../main/files/read-document'
import { saveDocument } from '../../main/files/save-document'
import { versionsFolder } from '../../main/files/versions'

const OLD = `{"schema":1,"filler":"${'old '.repeat(2_000)}"}`
const NEW = `{"schema":1,"filler":"${'new! '.repeat(3_000)}"}`
const CURRENT = `{"schema":2,"filler":"${'new! '.repeat(3_000)}"}`
const noon = new Date('2026-03-01T12:00:00Z')

let folder = ''
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sillwright-full-'))
})
afterEach(() => rm(folder, { recursive: true, force: true }))

interface Failing {
  readonly disk: FileSystem
  /** The steps taken so far, by name. */
  readonly steps: string[]
}

/** A disk whose step `at` fails with a system error; a write that fails has put half of its bytes down first. */
function failingAt(at: number, code: string): Failing {
  const steps: string[] = []
  const error = () => Object.assign(new Error(code), { code })
  const step = async <T>(name: string, go: () => Promise<T>, instead: () => Promise<void> = async () => undefined) => {
    steps.push(name)
    if (steps.length - 1 !== at) return go()
    await instead()
    throw error()
  }
  const real = nodeFileSystem
  const disk: FileSystem = {
    create: async (path, mode) => {
      const file = await step('create', () => real.create(path, mode))
      return {
        writeFile: (bytes) =>
          step(
            'write',
            () => file.writeFile(bytes),
            () => file.writeFile(bytes.slice(0, bytes.length >> 1))
          ),
        sync: () => step('fsync', () => file.sync()),
        close: () =>
          step(
            'close',
            () => file.close(),
            () => file.close()
          )
      }
    },
    rename: (from, to) => step('rename', () => real.rename(from, to)),
    copy: (from, to) =>
      step(
        'copy',
        () => real.copy(from, to),
        () => writeFile(to, 'half')
      ),
    makeFolder: (path) => step('make folder', () => real.makeFolder(path)),
    flushFolder: (path) => step('fsync folder', () => real.flushFolder(path)),
    // Taking away needs no room, and a disk that is full takes away all the same.
    remove: real.remove,
    names: real.names,
    modeOf: real.modeOf,
    writtenAt: real.writtenAt
  }
  return { disk, steps }
}

const CODES = [
  ['ENOSPC', 'disk-full'],
  ['EDQUOT', 'disk-full'],
  ['EIO', 'failed'],
  ['EROFS', 'no-permission']
] as const

describe.each([
  ['of the same schema', NEW],
  ['of an older schema', CURRENT]
])('a save over a document %s', (_which, text) => {
  it.each(CODES)('keeps the old document whole when any one step fails with %s, and says so', async (code, meant) => {
    const tried: string[] = []
    for (let at = 0; ; at += 1) {
      const place = join(folder, `${at}`)
      const path = join(place, 'sill.json')
      await mkdir(place)
      await writeFile(path, OLD)
      const { disk, steps } = failingAt(at, code)
      const saved = await saveDocument(path, text, stampOf(OLD), false, noon, disk)
      const failed = steps[at]
      if (failed === undefined) break
      tried.push(failed)
      const found = await readFile(path, 'utf8')
      if (saved.ok) expect(found, failed).toBe(text)
      else {
        expect(found, failed).toBe(OLD)
        expect(saved.problem).toEqual({ code: meant, about: 'sill.json' })
      }
      for (const name of await readdir(place)) expect(name, failed).not.toContain('.draft')
      for (const name of await readdir(versionsFolder(path)).catch(() => [])) {
        expect(await readFile(join(versionsFolder(path), name), 'utf8')).toBe(OLD)
      }
      const again = await saveDocument(path, text, stampOf(found), false, noon)
      expect(again.ok, failed).toBe(true)
    }
    for (const step of ['create', 'write', 'fsync', 'rename', 'fsync folder']) expect(tried).toContain(step)
    console.log(
      `full disk: ${code} at each of ${tried.length} steps (${tried.join(', ')}): the old or the new document, whole`
    )
  })
})

describe('a disk that is really full', () => {
  it('keeps the old document whole, and the save says why it failed', async () => {
    const path = join(folder, 'sill.json')
    if (mount(folder)) {
      try {
        await writeFile(path, OLD)
        const big = `{"schema":1,"filler":"${'x'.repeat(200_000)}"}`
        const saved = await saveDocument(path, big, stampOf(OLD), false, noon)
        expect(saved).toEqual({ ok: false, problem: { code: 'disk-full', about: 'sill.json' } })
        await keptWhole(path)
      } finally {
        spawnSync('umount', [folder])
      }
      console.log('full disk: a mounted file system of 64 KiB, 200 kB to save: refused, the old document whole')
      return
    }
    // No right to mount one: the system is told to take no file over 64 KiB from the process that saves.
    const program = await saverOnce()
    await writeFile(path, OLD)
    const done = spawnSync('bash', ['-c', `ulimit -f 64; exec "$0" "$@"`, process.execPath, program, path, '200000'], {
      encoding: 'utf8'
    })
    expect(done.stdout).toBe('{"ok":false,"problem":{"code":"too-large","about":"sill.json"}}')
    await keptWhole(path)
    console.log(
      'full disk: no file system can be mounted here; the system’s limit of 64 KiB a file: refused, the old whole'
    )
  })
})

async function keptWhole(path: string): Promise<void> {
  expect(await readFile(path, 'utf8')).toBe(OLD)
  expect((await readdir(folder)).filter((name) => name.includes('draft'))).toEqual([])
}

/** The save of one document as a program of its own; answers its path. */
async function saverOnce(): Promise<string> {
  await build({
    input: { once: fileURLToPath(new URL('save-once.ts', import.meta.url)) },
    platform: 'node',
    logLevel: 'silent',
    output: { dir: join(folder, 'program'), format: 'esm', entryFileNames: '[name].mjs' }
  })
  return join(folder, 'program/once.mjs')
}

const mount = (at: string): boolean =>
  spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=64k,mode=777', 'none', at], { stdio: 'ignore' }).status === 0

describe('a folder that may not be written', () => {
  it('is said, and the document in it stays as it was', async () => {
    const program = await saverOnce()
    const locked = join(folder, 'locked')
    await mkdir(locked)
    await writeFile(join(locked, 'sill.json'), OLD)
    for (const [path, mode] of [
      [folder, '755'],
      [locked, '555'],
      [join(locked, 'sill.json'), '444']
    ] as const)
      spawnSync('chmod', [mode, path])
    // The administrator may write anywhere: the save is then made by an account without rights.
    const asNobody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {}
    const done = spawnSync(process.execPath, [program, join(locked, 'sill.json')], {
      encoding: 'utf8',
      ...asNobody
    })
    expect(done.stdout.trim()).toBe('{"ok":false,"problem":{"code":"no-permission","about":"sill.json"}}')
    expect(await readFile(join(locked, 'sill.json'), 'utf8')).toBe(OLD)
    expect(await readdir(locked)).toEqual(['sill.json'])
    spawnSync('chmod', ['755', locked])
  })
})
