import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseAnswer, parseEvent } from '../../../main/bridge/answers'
import { FILE_PROBLEM_CODES, MENU_COMMANDS, MESSAGE_NAMES } from '../../../main/bridge/contract'
import { pageSide } from '../../../main/bridge/page-side'

const FILE = { fileId: 'f1', name: 'kitchen.sillwright', kind: 'design', text: '{}', stamp: 'a1', copy: false }
const RECORD = { key: 'design-1', name: 'Kitchen', changedAt: '2026-03-01T10:00:00.000Z', text: '{}' }
const about = (message: (typeof MESSAGE_NAMES)[number], value: unknown): string => {
  const reply = parseAnswer(message, { ok: true, value })
  if (reply.ok) return 'taken'
  expect(reply.problem.code).toBe('bad-answer')
  return reply.problem.about
}

describe('an answer of the shell', () => {
  it('is rebuilt when it is what its message may be answered with', () => {
    const answer = { ok: true, value: FILE }
    const parsed = parseAnswer('document:open', answer)
    expect(parsed).toEqual(answer)
    expect(parsed).not.toBe(answer)
    expect(about('document:open', null)).toBe('taken')
    expect(about('recovery:list', [RECORD])).toBe('taken')
    expect(about('print:pdf', false)).toBe('taken')
  })

  it('is a problem that names the message and the field when it is not', () => {
    expect(about('document:open', { ...FILE, text: 7 })).toBe('document:open text')
    expect(about('document:open', { ...FILE, fileId: '/etc/passwd' })).toBe('document:open fileId')
    expect(about('document:open', { ...FILE, more: 1 })).toBe('document:open')
    expect(about('document:open-recent', null)).toBe('document:open-recent')
    expect(about('document:save', { fileId: 'f1', name: 'a' })).toBe('document:save stamp')
    expect(about('recent:list', [{ fileId: 'f1', name: 'a', folder: '/sills', kind: 'program' }])).toBe(
      'recent:list 0.kind'
    )
    expect(about('recovery:list', [RECORD, { ...RECORD, changedAt: 'yesterday' }])).toBe('recovery:list 1.changedAt')
    expect(about('window:close', 0)).toBe('window:close')
  })

  it('may be any problem of the contract and no other', () => {
    for (const code of FILE_PROBLEM_CODES) {
      const refusal = { ok: false, problem: { code, about: 'kitchen.json' } }
      expect(parseAnswer('recent:list', refusal)).toEqual(refusal)
    }
    for (const answer of [{ ok: false, problem: { code: 'other', about: '' } }, { ok: false }, { ok: 'yes' }, [], 7]) {
      expect(parseAnswer('recent:list', answer)).toEqual({
        ok: false,
        problem: { code: 'bad-answer', about: 'recent:list' }
      })
    }
  })

  it('of whatever kind makes a reply and reaches no prototype', () => {
    fc.assert(
      fc.property(fc.constantFrom(...MESSAGE_NAMES), fc.jsonValue(), (message, value) => {
        for (const answer of [value, { ok: true, value }, { ok: false, problem: value }]) {
          const reply = parseAnswer(message, answer)
          expect(typeof reply.ok).toBe('boolean')
          if (!reply.ok) expect(FILE_PROBLEM_CODES).toContain(reply.problem.code)
        }
      }),
      { seed: 20_261_125, numRuns: 500 }
    )
    const sly = JSON.parse(`{"ok": true, "value": {"__proto__": {"polluted": 1}, "fileId": "f1"}}`)
    expect(parseAnswer('document:save', sly).ok).toBe(false)
    expect(Reflect.get({}, 'polluted')).toBeUndefined()
  })
})

describe('an event of the shell', () => {
  it('is taken when the contract has it', () => {
    const events = [
      ...MENU_COMMANDS.map((command) => ({ kind: 'menu', command })),
      { kind: 'opened', file: FILE },
      { kind: 'close-asked' }
    ]
    expect(events.map(parseEvent)).toEqual(events)
  })

  it.each([
    [{ kind: 'menu', command: 'format-disk' }, 'command'],
    [{ kind: 'opened', file: { ...FILE, stamp: null } }, 'file.stamp'],
    [{ kind: 'opened' }, 'file'],
    [{ kind: 'quit' }, 'kind'],
    ['close-asked', 'event'],
    [null, 'event']
  ])('%j is said to be unreadable, by its field', (told, field) => {
    expect(parseEvent(told)).toEqual({ kind: 'unreadable', about: field })
  })
})

describe('the page’s end of the bridge', () => {
  const over = (invoke: () => Promise<unknown>) => pageSide({ invoke, on: () => undefined, off: () => undefined })

  it('turns no answer, and one that cannot be read, into a named problem', async () => {
    const silent = over(() => Promise.reject(new Error('No handler registered')))
    expect(await silent.send('recent:list', null)).toEqual({
      ok: false,
      problem: { code: 'bad-answer', about: 'recent:list' }
    })
    const confused = over(async () => ({ ok: true, value: [{ fileId: 'f1' }] }))
    expect(await confused.send('recent:list', null)).toEqual({
      ok: false,
      problem: { code: 'bad-answer', about: 'recent:list 0.name' }
    })
  })
})
