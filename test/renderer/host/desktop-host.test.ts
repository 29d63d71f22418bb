import { afterEach, describe, expect, it, vi } from 'vitest'
import { pageSide, type ShellPort } from '../../../main/bridge/page-side'
import { startingWorkshop } from '../../../renderer/documents/first-workshop'
import { hostText } from '../../../renderer/documents/open-documents'
import { desktopHost } from '../../../renderer/host/desktop-host'
import type { HostProblem } from '../../../renderer/host/host'

type Relay = Parameters<ShellPort['on']>[1]

/** The page over its own end of the bridge, before a shell that gives the answers it is told to. */
function desktop(answers: Readonly<Record<string, unknown>>) {
  const sent: { readonly name: string; readonly payload: unknown }[] = []
  const relays = new Set<Relay>()
  const given = new Map(Object.entries(answers))
  const port: ShellPort = {
    invoke: async (name, payload) => {
      sent.push({ name, payload })
      return given.has(name) ? given.get(name) : { ok: true, value: null }
    },
    on: (_channel, relay) => relays.add(relay),
    off: (_channel, relay) => relays.delete(relay)
  }
  const troubles: HostProblem[] = []
  const host = desktopHost(pageSide(port))
  host.onTrouble((problem) => troubles.push(problem))
  return {
    host,
    sent,
    troubles,
    given,
    tell: (event: unknown) => {
      for (const relay of relays) relay({}, event)
    }
  }
}

afterEach(() => vi.unstubAllGlobals())

const ok = (value: unknown) => ({ ok: true, value })
const FILE = { fileId: 'f1', name: 'kitchen.sillwright', kind: 'design', text: '{}', stamp: 'a1', copy: false }
const SAVE = { kind: 'design', file: null, name: 'kitchen', text: '{}' } as const

describe('the desktop window, given an answer that it cannot read', () => {
  it('opens nothing and says which message and field', async () => {
    const { host } = desktop({ 'document:open': ok({ ...FILE, text: undefined }) })
    const opened = await host.open('design')
    expect(opened).toEqual({ ok: false, problem: { code: 'unreadable', about: 'document:open text' } })
    if (!opened.ok) expect(hostText(opened.problem)).toContain('cannot read (document:open text)')
  })

  it('does not take a save for done, and asks with the old stamp again', async () => {
    const { host, sent, given } = desktop({ 'document:open': ok(FILE), 'document:save': ok({ saved: true }) })
    const opened = await host.open('design')
    if (!opened.ok) throw new Error('the file was not opened')
    const { file } = opened.value
    expect(await host.save({ ...SAVE, file })).toMatchObject({ ok: false, problem: { code: 'unreadable' } })
    given.set('document:save', ok({ fileId: 'f1', name: 'kitchen.sillwright', stamp: 'b2' }))
    expect(await host.save({ ...SAVE, file })).toMatchObject({ ok: true, value: { id: 'f1' } })
    const stamps = sent.filter(({ name }) => name === 'document:save').map(({ payload }) => payload)
    expect(stamps).toMatchObject([{ stamp: 'a1' }, { stamp: 'a1' }])
  })

  it.each(['document:open-recent', 'document:save-as', 'export:save', 'print:pdf', 'recent:list'])(
    'makes a problem of %s',
    async (name) => {
      const { host } = desktop({ [name]: 'thanks' })
      const asked = {
        'document:open-recent': () => host.openRecent('f1'),
        'document:save-as': () => host.save(SAVE),
        'export:save': () => host.writeOut('a.csv', 'text/csv', new Uint8Array(1)),
        'print:pdf': () => host.printPdf('a.pdf', new Uint8Array(1)),
        'recent:list': () => host.recents()
      }
      expect(await asked[name as keyof typeof asked]()).toEqual({
        ok: false,
        problem: { code: 'unreadable', about: name }
      })
    }
  )

  it('says so where nobody waits for the answer', async () => {
    const { host, troubles } = desktop({ 'window:close': ok('closing'), 'window:state': 7, 'recovery:drop': ok(1) })
    host.close()
    host.setUnsaved(true, 'Kitchen')
    await host.dropRecovery()
    await expect
      .poll(() => troubles.map((each) => ('about' in each ? each.about : each.code)).sort())
      .toEqual(['recovery:drop', 'window:close', 'window:state'])
  })
})

describe('the desktop window, told something that it cannot read', () => {
  it('says so, and does none of it', async () => {
    const { host, troubles, tell } = desktop({})
    expect(await host.fileAtStart()).toBeNull()
    const commands: string[] = []
    const files: string[] = []
    host.onCommand((command) => commands.push(command))
    host.onOpenedFile(({ file }) => files.push(file.name))
    tell({ kind: 'opened', file: { ...FILE, name: '' } })
    tell({ kind: 'menu', command: 'format-disk' })
    expect([commands, files]).toEqual([[], []])
    expect(troubles).toEqual([
      { code: 'unreadable', about: 'file.name' },
      { code: 'unreadable', about: 'command' }
    ])
    tell({ kind: 'opened', file: FILE })
    tell({ kind: 'menu', command: 'undo' })
    tell({ kind: 'close-asked' })
    expect([commands, files]).toEqual([['undo', 'close'], ['kitchen.sillwright']])
  })
})

describe('a window opened with files', () => {
  it('gets the first at the start and loses none of those that come before anybody takes them', async () => {
    const { host, tell } = desktop({})
    const start = host.fileAtStart()
    for (const name of ['one.sillwright', 'two.sillwright']) tell({ kind: 'opened', file: { ...FILE, name } })
    expect((await start)?.file.name).toBe('one.sillwright')
    tell({ kind: 'opened', file: { ...FILE, name: 'three.sillwright' } })
    const files: string[] = []
    const stop = host.onOpenedFile(({ file }) => files.push(file.name))
    tell({ kind: 'opened', file: { ...FILE, name: 'four.sillwright' } })
    stop()
    expect(files).toEqual(['two.sillwright', 'three.sillwright', 'four.sillwright'])
  })
})

describe('what is kept on this machine, where it cannot be read', () => {
  it('is not taken for nothing: the workshop is not written over, and is shown for reading only', async () => {
    vi.stubGlobal('navigator', { language: 'en-GB' })
    const { host, sent, given } = desktop({ 'recovery:list': ok([{ key: 'workshop' }]) })
    expect(await startingWorkshop(host)).toMatchObject({
      readOnly: true,
      says: expect.stringContaining('reading only')
    })
    await expect(host.keepWorkshop('{"first":1}')).rejects.toThrow('bad-answer')
    expect(sent.filter(({ name }) => name === 'recovery:write')).toEqual([])
    const kept = { key: 'workshop', name: 'workshop', changedAt: '2026-03-01T10:00:00.000Z', text: '{"years":3}' }
    given.set('recovery:list', ok([kept]))
    expect(await host.keepWorkshop('{"first":1}')).toBe(false)
    expect(sent.filter(({ name }) => name === 'recovery:write')).toEqual([])
  })

  it('is not offered and not thrown away', async () => {
    const { host, sent } = desktop({ 'recovery:list': { ok: false, problem: { code: 'failed', about: '' } } })
    await expect(host.leftRecoveries()).rejects.toThrow('failed')
    expect(sent.map(({ name }) => name)).toEqual(['recovery:list'])
  })
})
