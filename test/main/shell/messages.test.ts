import { mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { parseAnswer, parseEvent } from '../../../main/bridge/answers'
import { MESSAGE_NAMES, type ShellEvent } from '../../../main/bridge/contract'
import { fileIds } from '../../../main/files/file-ids'
import { heldFiles } from '../../../main/files/held-files'
import { recoveryIn } from '../../../main/files/recovery'
import { windowsToRecover } from '../../../main/files/recovery-slot'
import { fileDesk, type Premises, recoveryFolderIn } from '../../../main/shell/file-desk'
import type { Desktop, SenderEvent } from '../../../main/shell/ports'
import { registerMessages } from '../../../main/shell/register-messages'
import { ownAddress } from '../../../main/shell/trusted-sender'

type Handler = (event: SenderEvent, payload: unknown) => Promise<unknown>

let folder = ''
let chosen: string | null = null
let told: ShellEvent[] = []
let windows: string[] = []
let said: string[] = []
let recent: string[] = []
let premises: Premises
const port = new Map<string, Handler>()
const page: SenderEvent = { sender: { id: 1 }, senderFrame: { url: 'app://bundle/index.html', parent: null } }
const otherPage: SenderEvent = { ...page, sender: { id: 2 } }

/** Sends a message as the page does: whatever the shell answers must arrive whole at the page's end of the bridge. */
const send = async (name: string, payload: unknown, event = page): Promise<unknown> => {
  const handler = port.get(name)
  if (handler === undefined) throw new Error(`no handler for ${name}`)
  const answer = await handler(event, payload)
  const message = MESSAGE_NAMES.find((each) => each === name)
  if (message !== undefined) expect(parseAnswer(message, structuredClone(answer))).toEqual(answer)
  return answer
}

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sillwright-shell-'))
  chosen = null
  told = []
  windows = []
  said = []
  recent = []
  port.clear()
  const desktop: Desktop = {
    askOpen: async () => chosen,
    askSave: async () => chosen,
    printPdf: async (bytes) => bytes.byteLength > 0,
    setWindow: (title, edited) => windows.push(`${title} ${edited}`),
    closeWindow: () => windows.push('closed'),
    tell: (event) => told.push(event),
    say: (words) => said.push(words),
    recentChanged: (path) => recent.push(path),
    now: () => new Date('2026-03-01T12:00:00Z')
  }
  premises = { home: join(folder, 'home'), ids: fileIds(), held: heldFiles() }
  const desks = [fileDesk(desktop, premises, 1), fileDesk(desktop, premises, 2)]
  registerMessages({ handle: (name, handler) => port.set(name, handler) }, (id) => desks[id - 1]?.handlers ?? null)
})
afterEach(() => rm(folder, { recursive: true, force: true }))

describe('the messages between page and shell', () => {
  it('each have one handler', () => {
    expect([...port.keys()].sort()).toEqual([...MESSAGE_NAMES].sort())
  })

  it('open, change and save a document without the page knowing its path', async () => {
    chosen = join(folder, 'kitchen.json')
    await writeFile(chosen, 'one')
    const opened = await send('document:open', { kind: 'design' })
    expect(opened).toMatchObject({ ok: true, value: { fileId: 'f1', name: 'kitchen.json', text: 'one' } })
    expect(JSON.stringify(opened)).not.toContain(folder)
    const { stamp } = (opened as { value: { stamp: string } }).value
    const saved = await send('document:save', { fileId: 'f1', text: 'two', stamp, overwrite: false })
    expect(saved).toMatchObject({ ok: true, value: { fileId: 'f1' } })
    expect(await readFile(chosen, 'utf8')).toBe('two')
    expect(await send('document:save', { fileId: 'f1', text: 'three', stamp, overwrite: false })).toEqual({
      ok: false,
      problem: { code: 'changed-on-disk', about: 'kitchen.json' }
    })
    expect(await send('recent:list', null)).toMatchObject({ ok: true, value: [{ fileId: 'f1', kind: 'design' }] })
    expect(await send('document:open-recent', { fileId: 'f1' })).toMatchObject({ ok: true, value: { text: 'two' } })
  })

  it('answer null when the person calls the dialog off', async () => {
    expect(await send('document:open', { kind: 'design' })).toEqual({ ok: true, value: null })
    expect(await send('document:save-as', { kind: 'design', suggestedName: 'a', text: '' })).toEqual({
      ok: true,
      value: null
    })
    expect(await send('export:save', { suggestedName: 'a', bytes: new Uint8Array(1) })).toEqual({
      ok: true,
      value: null
    })
  })

  it('reach no file that was not handed out', async () => {
    for (const fileId of ['f1', 'f99', '/etc/passwd', '../x']) {
      const answer = await send('document:save', { fileId, text: 'x', stamp: '', overwrite: true })
      expect(answer).toMatchObject({ ok: false })
    }
  })

  it('are refused from any frame but the program’s own page', async () => {
    const senders: SenderEvent[] = [
      { ...page, senderFrame: null },
      { ...page, senderFrame: { url: 'https://sills.example/', parent: null } },
      { ...page, senderFrame: { url: 'app://other/index.html', parent: null } },
      { ...page, senderFrame: { url: 'app://bundle/index.html', parent: {} } },
      { ...page, sender: { id: 99 } }
    ]
    for (const sender of senders) {
      expect(await send('recent:list', null, sender)).toEqual({
        ok: false,
        problem: { code: 'bad-message', about: 'sender' }
      })
    }
  })

  it('are refused, by the field that is wrong, when the payload is not what it should be', async () => {
    const about = async (name: string, payload: unknown) => {
      const answer = (await send(name, payload)) as { problem?: { code: string; about: string } }
      return answer.problem?.code === 'bad-message' ? answer.problem.about : 'accepted'
    }
    expect(await about('document:open', { kind: 'program' })).toBe('kind')
    expect(await about('document:open', { kind: 'design', extra: 1 })).toBe('document:open')
    expect(await about('recovery:write', { key: '../x', name: 'n', text: '' })).toBe('key')
    expect(await about('recovery:drop', null)).toBe('recovery:drop')
    expect(await about('print:pdf', { bytes: 'text' })).toBe('bytes')
    expect(
      await about('document:save', {
        fileId: 'f1',
        text: 'x'.repeat(20 * 1024 * 1024 + 1),
        stamp: '',
        overwrite: false
      })
    ).toBe('text')
  })

  it('keep recovered work and the window’s state', async () => {
    await send('recovery:write', { key: 'k-1', name: 'Kitchen', text: '{}' })
    expect(await send('recovery:list', null)).toMatchObject({
      value: [{ key: 'k-1', changedAt: '2026-03-01T12:00:00.000Z' }]
    })
    await send('recovery:drop', { key: 'k-1' })
    expect(await send('recovery:list', null)).toEqual({ ok: true, value: [] })
    await send('window:state', { title: 'Kitchen', edited: true })
    await send('window:close', null)
    expect(windows).toEqual(['Kitchen true', 'closed'])
    expect(await send('print:pdf', { bytes: new Uint8Array(3) })).toEqual({ ok: true, value: true })
  })

  it('hand a design that the system opens to the page once it listens, and say what could not be opened', async () => {
    const path = join(folder, 'given.sillwright.json')
    await writeFile(path, 'given')
    const words: string[] = []
    const desk = fileDesk(
      { ...silent, tell: (event) => told.push(event), say: (each) => words.push(each) },
      premises,
      3
    )
    await desk.openPath(path)
    expect(told).toEqual([])
    await desk.handlers['window:ready'](null)
    await desk.handlers['window:ready'](null)
    expect(told).toMatchObject([{ kind: 'opened', file: { name: 'given.sillwright.json', text: 'given' } }])
    expect(told.map(parseEvent)).toEqual(told)
    await desk.openPath(path)
    expect(told).toHaveLength(2)
    await desk.openPath(join(folder, 'missing.sillwright.json'))
    expect(words).toEqual(['missing.sillwright.json was not opened: not found.'])
  })
})

describe('two windows on one file', () => {
  it('the second says so and has a copy, which is saved under a name of its own', async () => {
    const file = join(folder, 'kitchen.json')
    await writeFile(file, 'one')
    await symlink(file, join(folder, 'link.json'))
    chosen = file
    expect(await send('document:open', { kind: 'design' })).toMatchObject({ value: { fileId: 'f1', copy: false } })
    expect(said).toEqual([])
    chosen = join(folder, 'link.json')
    const second = await send('document:open', { kind: 'design' }, otherPage)
    expect(second).toMatchObject({ value: { fileId: 'f2', copy: true, text: 'one' } })
    expect(said).toEqual([
      'kitchen.json is open in another window. This is a copy: saving it asks for a name of its own.'
    ])

    const save = { fileId: 'f2', text: 'two', stamp: '', overwrite: true }
    chosen = null
    expect(await send('document:save', save, otherPage)).toEqual({ ok: true, value: null })
    chosen = file
    expect(await send('document:save', save, otherPage)).toEqual({
      ok: false,
      problem: { code: 'open-elsewhere', about: 'kitchen.json' }
    })
    chosen = join(folder, 'second.json')
    expect(await send('document:save', save, otherPage)).toMatchObject({ ok: true, value: { name: 'second.json' } })
    expect(await readFile(file, 'utf8')).toBe('one')
    expect(await readFile(chosen, 'utf8')).toBe('two')
  })

  it('a window that goes or takes up another file leaves the first free', async () => {
    const [one, two] = [join(folder, 'one.json'), join(folder, 'two.json')]
    for (const path of [one, two]) await writeFile(path, '{}')
    const open = async (path: string, from: SenderEvent) => {
      chosen = path
      return send('document:open', { kind: 'design' }, from)
    }
    await open(one, page)
    await open(two, page)
    expect(await open(one, otherPage)).toMatchObject({ value: { copy: false } })
    expect(await open(two, otherPage)).toMatchObject({ value: { copy: true } })
    premises.held.release(1)
    expect(await open(two, otherPage)).toMatchObject({ value: { copy: false } })
  })

  it('each keep work for recovery of their own, and share the workshop', async () => {
    const write = (key: string, text: string, from: SenderEvent) =>
      send('recovery:write', { key, name: 'n', text }, from)
    await write('design', 'first', page)
    await write('design', 'second', otherPage)
    await write('workshop', 'shop', otherPage)
    const texts = async (from: SenderEvent) => {
      const reply = (await send('recovery:list', null, from)) as { value: { key: string; text: string }[] }
      return reply.value.map(({ key, text }) => `${key} ${text}`).sort()
    }
    expect(await texts(page)).toEqual(['design first', 'workshop shop'])
    expect(await texts(otherPage)).toEqual(['design second', 'workshop shop'])
    expect(await windowsToRecover(recoveryIn(recoveryFolderIn(premises.home)))).toEqual([1, 2])
    await send('recovery:drop', { key: 'design' }, otherPage)
    expect(await texts(page)).toEqual(['design first', 'workshop shop'])
  })

  it('work that was given up when its window closed is not offered again; work not asked about is', async () => {
    const keep = () => send('recovery:write', { key: 'design', name: 'n', text: '{}' })
    const left = async () => ((await send('recovery:list', null)) as { value: unknown[] }).value.length
    await keep()
    await send('window:close', null)
    expect(await left()).toBe(1)
    await send('window:state', { title: 'Kitchen', edited: true })
    await send('window:close', null)
    expect(await left()).toBe(0)
  })

  it('tells the system of each file that is opened or saved under a name', async () => {
    chosen = join(folder, 'kitchen.json')
    await send('document:save-as', { kind: 'design', suggestedName: 'a', text: '{}' })
    await send('document:open', { kind: 'design' })
    expect(recent).toEqual([chosen, chosen])
  })
})

const silent: Desktop = {
  askOpen: async () => null,
  askSave: async () => null,
  printPdf: async () => false,
  setWindow: () => undefined,
  closeWindow: () => undefined,
  tell: () => undefined,
  say: () => undefined,
  recentChanged: () => undefined,
  now: () => new Date(0)
}

describe('the program’s own address', () => {
  it.each([
    ['app://bundle/index.html', true],
    ['app://bundle', true],
    ['app://bundle.sills.example/', false],
    ['http://bundle/', false],
    ['file:///index.html', false],
    ['', false],
    ['not an address', false]
  ])('%s: %s', (address, own) => {
    expect(ownAddress(address)).toBe(own)
  })
})
