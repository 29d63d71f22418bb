import { chmod, mkdir, mkdtemp, readdir, readFile, rm, truncate, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { runCommand } from '../../main/program'
import { corpus } from '../designs/documents'

const DESIGN = corpus('kitchen-sill.schema-1.design.json')

let folder = ''
const out: string[] = []
const err: string[] = []
const at = (name: string): string => join(folder, name)

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sillwright-commands-'))
  out.length = 0
  err.length = 0
  const into = (lines: string[]) => (text: unknown) => {
    lines.push(String(text))
    return true
  }
  vi.spyOn(process.stdout, 'write').mockImplementation(into(out))
  vi.spyOn(process.stderr, 'write').mockImplementation(into(err))
})
afterEach(async () => {
  vi.restoreAllMocks()
  await chmod(folder, 0o755)
  await rm(folder, { recursive: true, force: true })
})

/** One line on stderr that names what is wrong, nothing on stdout, exit code 2. */
async function refused(command: string, argv: readonly string[]): Promise<string> {
  const code = await runCommand(command, argv)
  expect([code, out]).toEqual([2, []])
  expect(err).toHaveLength(1)
  const [line = ''] = err
  expect(line).toMatch(/^[^\n]+\n$/)
  return line
}

const INPUTS: readonly (readonly [string, (path: string) => Promise<void>])[] = [
  ['a file that is not there', async () => undefined],
  ['a folder', (path) => mkdir(path).then(() => undefined)],
  [
    'a binary file',
    (path) =>
      writeFile(
        path,
        Uint8Array.from({ length: 4096 }, (_, k) => (k * 37) & 255)
      )
  ],
  [
    'a sparse file of 2 GB',
    async (path) => {
      await writeFile(path, '')
      await truncate(path, 2 * 1024 ** 3)
    }
  ],
  ['a text that is no document', (path) => writeFile(path, 'sill, 900 mm')],
  ['an empty file', (path) => writeFile(path, '')],
  ['a document cut off', (path) => writeFile(path, DESIGN.slice(0, 700))],
  ['a document with a wrong field', (path) => writeFile(path, DESIGN.replace('"quantity": 1', '"quantity": 0.5'))],
  ['a document nested without end', (path) => writeFile(path, '['.repeat(1_000_000))]
]

describe.each(INPUTS)('the commands given %s', (what, make) => {
  const name = 'given.json'

  it('plan: exit code 2 and one line that names it', async () => {
    await make(at(name))
    expect(await refused('plan', [at(name)])).toContain(at(name))
  })

  it('plan, as the workshop: exit code 2 and one line that names it', async () => {
    await make(at(name))
    await writeFile(at('design.json'), DESIGN)
    expect(await refused('plan', [at('design.json'), '--workshop', at(name)])).toContain(at(name))
  })

  it('sheet: exit code 2, one line that names it, and no folder made', async () => {
    await make(at(name))
    const before = await readdir(folder)
    expect(await refused('sheet', [at(name), '--out', at('sheets')])).toContain(at(name))
    expect(await readdir(folder)).toEqual(before)
  })

  it('reference, cutting and rings: exit code 2 and one line', async () => {
    await make(at(name))
    // A list without a line asks for nothing, and that is answered.
    for (const command of what === 'an empty file' ? ['reference'] : ['reference', 'cutting', 'rings']) {
      err.length = 0
      expect(await refused(command, [at(name)]), command).not.toBe('')
    }
  })
})

describe('the sheet command', () => {
  it.each([
    ['a file where a folder should be', 'taken', 'taken'],
    ['a folder below a file', 'taken', 'taken/sheets']
  ])('given %s: exit code 2, one line that names it, nothing left behind', async (_what, made, wanted) => {
    await writeFile(at(made), 'a note')
    await writeFile(at('design.json'), DESIGN)
    expect(await refused('sheet', [at('design.json'), '--out', at(wanted)])).toContain(at(wanted))
    expect((await readdir(folder)).sort()).toEqual(['design.json', 'taken'])
    expect(await readFile(at('taken'), 'utf8')).toBe('a note')
  })

  it('given a folder it may not write in: exit code 2, one line that names it, nothing left behind', async () => {
    const locked = at('locked')
    await mkdir(locked)
    await writeFile(at('design.json'), DESIGN)
    await chmod(locked, 0o555)
    await chmod(folder, 0o755)
    // The administrator may write anywhere: the command is then given an account without rights.
    await asNobody(async () => {
      expect(await refused('sheet', [at('design.json'), '--out', locked])).toContain(locked)
      err.length = 0
      expect(await refused('sheet', [at('design.json'), '--out', join(locked, 'new')])).toContain(join(locked, 'new'))
    })
    expect(await readdir(locked)).toEqual([])
  })
})

async function asNobody(go: () => Promise<void>): Promise<void> {
  const { geteuid, seteuid } = process
  if (geteuid?.() !== 0 || seteuid === undefined) return go()
  seteuid.call(process, 65_534)
  try {
    await go()
  } finally {
    seteuid.call(process, 0)
  }
}

describe('a command that there is not', () => {
  it('is said in one line with those that there are', async () => {
    expect(await refused('nest', [])).toContain('plan, sheet, cutting, rings, reference')
  })
})
