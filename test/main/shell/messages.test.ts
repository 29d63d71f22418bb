import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { MESSAGE_NAMES, type ShellEvent } from '../../../main/bridge/contract'
import { fileDesk } from '../../../main/shell/file-desk'
import type { Desktop, SenderEvent } from '../../../main/shell/ports'
import { registerMessages } from '../../../main/shell/register-messages'
import { ownAddress } from '../../../main/shell/trusted-sender'

type Handler = (event: SenderEvent, payload: unknown) => Promise<unknown>

let folder = ''
let chosen: string | null = null
let told: ShellEvent[] = []
let windows: string[] = []
const port = new Map<string, Handler>()
const page: SenderEvent = { senderFrame: { url: 'app://bundle/index.html', parent: null } }

const send = (name: string, payload: unknown, event = page): Promise<unknown> => {
  const handler = port.get(name)
  if (handler === undefined) throw new Error(`no handler for ${name}`)
  return handler(event, payload)
}

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sillwright-shell-'))
  chosen = null
  told = []
  windows = []
  port.clear()
  const desktop: Desktop = {
    askOpen: async () => chosen,
    askSave: async () => chosen,
    printPdf: async (bytes) => bytes.byteLength > 0,
    setWindow: (title, edited) => windows.push(`${title} ${edited}`),
    closeWindow: () => windows.push('closed'),
    tell: (event) => told.push(event),
    now: () => new Date('2026-03-01T12:00:00Z')
  }
  const desk = fileDesk(desktop, join(folder, 'home'))
  registerMessages({ handle: (name, handler) => port.set(name, handler) }, desk.handlers)
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
      { senderFrame: null },
      { senderFrame: { url: 'https://sills.example/', parent: null } },
      { senderFrame: { url: 'app://other/index.html', parent: null } },
      { senderFrame: { url: 'app://bundle/index.html', parent: {} } }
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

  it('hand a design that the system opens to the page', async () => {
    const path = join(folder, 'given.sillwright.json')
    await writeFile(path, 'given')
    const desk = fileDesk({ ...silent, tell: (event) => told.push(event) }, join(folder, 'home'))
    await desk.openPath(path)
    await desk.openPath(join(folder, 'missing.sillwright.json'))
    expect(told).toMatchObject([{ kind: 'opened', file: { name: 'given.sillwright.json', text: 'given' } }])
  })
})

const silent: Desktop = {
  askOpen: async () => null,
  askSave: async () => null,
  printPdf: async () => false,
  setWindow: () => undefined,
  closeWindow: () => undefined,
  tell: () => undefined,
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
