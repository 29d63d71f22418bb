import { spawnSync } from 'node:child_process'
import { chmod, mkdir, mkdtemp, open, readdir, readFile, rm, truncate, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { runCommand } from '../../main/program'
import { corpus } from '../designs/documents'

const DESIGN = corpus('kitchen-sill.schema-1.design.json')

const RUN = fileURLToPath(new URL('../../main/launch/run.mjs', import.meta.url))

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

/** The system's own tool makes a named pipe where there is one. */
const pipeIn = async (path: string): Promise<void> => {
  expect(spawnSync('mkfifo', [path]).status).toBe(0)
}
const PIPES: typeof INPUTS = process.platform === 'win32' ? [] : [['a named pipe that nobody writes to', pipeIn]]

describe.each([...INPUTS, ...PIPES])('the commands given %s', (what, make) => {
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

  // Linux answers for a new name below /proc that its parent is missing: asked again and again, no end comes of it.
  it.runIf(process.platform === 'linux').each(['/proc/sheets', '/proc/sheets/kitchen', '/proc/self/sheets'])(
    'given %s, where no folder can be made: exit code 2 and one line that names it, soon',
    async (wanted) => {
      await writeFile(at('design.json'), DESIGN)
      expect(await refused('sheet', [at('design.json'), '--out', wanted])).toContain(wanted)
    }
  )

  it('makes the folders that are missing, and takes them away again when the sheet cannot be written', async () => {
    await writeFile(at('design.json'), DESIGN)
    expect(await runCommand('sheet', [at('design.json'), '--out', at('new/sheets')])).toBeLessThan(2)
    expect((await readdir(at('new/sheets'))).length).toBeGreaterThan(3)
    out.length = 0
    expect(await refused('sheet', [at('design.json'), '--out', at(`other/${'x'.repeat(300)}`)])).toContain('--out')
    expect((await readdir(folder)).sort()).toEqual(['design.json', 'new'])
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

describe('the sheet command that cannot finish', () => {
  it('leaves the folder as it was when one of its files cannot take its place', async () => {
    await writeFile(at('design.json'), DESIGN)
    const sheets = at('sheets')
    expect(await runCommand('sheet', [at('design.json'), '--out', sheets])).toBeLessThan(2)
    const names = (await readdir(sheets)).sort()
    const last = names.filter((name) => name.endsWith('.svg')).at(-1) ?? ''
    // The older sheet stands there, and a folder where the last of its files goes.
    for (const name of names) await writeFile(join(sheets, name), `older ${name}`)
    await rm(join(sheets, last))
    await mkdir(join(sheets, last))
    out.length = 0
    expect(await refused('sheet', [at('design.json'), '--out', sheets])).toContain(last)
    expect((await readdir(sheets)).sort()).toEqual(names)
    for (const name of names.filter((each) => each !== last))
      expect(await readFile(join(sheets, name), 'utf8')).toBe(`older ${name}`)
  })

  it('takes away the folders it made when its files cannot be written', async () => {
    await writeFile(at('design.json'), DESIGN)
    const small = at('small')
    await mkdir(small)
    // A full file system where one can be mounted; else the kernel's own folder, in which nothing can be made.
    const full = mount(small)
    const wanted = full ? join(small, 'new', 'sheets') : '/sys/sheets'
    try {
      expect(await refused('sheet', [at('design.json'), '--out', wanted])).toContain(wanted)
      expect(await readdir(small)).toEqual([])
    } finally {
      if (full) spawnSync('umount', [small])
    }
    expect((await readdir(folder)).sort()).toEqual(['design.json', 'small'])
  })
})

const mount = (where: string): boolean =>
  spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=64k,mode=777', 'none', where], { stdio: 'ignore' }).status === 0

describe('the commands as the shell starts them', () => {
  const run = (name: string, ...argv: readonly string[]) =>
    spawnSync(process.execPath, [RUN, name, ...argv], { encoding: 'utf8', cwd: folder })

  it.each([
    ['plan', []],
    ['sheet', ['--out', 'sheets']],
    ['cutting', []],
    ['rings', []],
    ['reference', []]
  ] as const)('%s ends with exit code 2 and one line of words, nothing on its output', async (name, more) => {
    const { status, stdout, stderr } = run(name, 'missing.json', ...more)
    expect([status, stdout]).toEqual([2, ''])
    expect(stderr).toMatch(/^[^\n]*missing\.json[^\n]*\n$/)
    expect(stderr).not.toMatch(/ at |Error:|node:/)
    expect(await readdir(folder)).toEqual([])
  })
})

describe('the commands', () => {
  it.each(['plan', 'sheet', 'cutting', 'rings', 'reference'])(
    '%s: a name with a line break is told in one line',
    async (name) => {
      expect(
        await refused(name, ['kitchen\n sill.json', '--out', 'sheets'].slice(0, name === 'sheet' ? 3 : 1))
      ).toContain('kitchen sill.json')
    }
  )

  it.each(['plan', 'sheet', 'cutting', 'rings', 'reference'])('%s: an empty name is said to be none', async (name) => {
    expect(await refused(name, ['', '--out', 'sheets'].slice(0, name === 'sheet' ? 3 : 1))).toMatch(/wanted|missing/)
  })

  // A file that Linux has for it: every write to it finds the disk full.
  it.runIf(process.platform === 'linux')(
    'whose output finds the disk full end with exit code 2 and one line',
    async () => {
      await writeFile(at('design.json'), DESIGN)
      const full = await open('/dev/full', 'w')
      try {
        const { status, stderr } = spawnSync(process.execPath, [RUN, 'plan', at('design.json')], {
          encoding: 'utf8',
          stdio: ['ignore', full.fd, 'pipe']
        })
        expect(status).toBe(2)
        expect(stderr).toMatch(/^The output cannot be written: ENOSPC[^\n]*\n$/)
      } finally {
        await full.close()
      }
    }
  )
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
