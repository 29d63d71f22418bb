import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'rolldown'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { PAGE_PORT } from '../../../main/server/page-server'

let home = ''
const running: ChildProcess[] = []

beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'sillwright-serve-'))
  await writeFile(join(home, 'index.html'), '<!doctype html><title>Sill</title>')
  await build({
    input: { serve: fileURLToPath(new URL('../../../main/server/serve-page.ts', import.meta.url)) },
    platform: 'node',
    external: [/^node:/],
    logLevel: 'silent',
    output: { dir: home, format: 'esm', entryFileNames: '[name].mjs' }
  })
  await writeFile(
    join(home, 'run.mjs'),
    `import { servePage } from './serve.mjs'\nawait servePage({ folder: import.meta.dirname, why: 'No window here', open: false })\n`
  )
})
afterAll(async () => {
  for (const child of running) child.kill('SIGKILL')
  await rm(home, { recursive: true })
})

/** A process of its own that serves the page, once it has said how it is stopped. */
async function served(): Promise<{ readonly child: ChildProcess; readonly lines: readonly string[] }> {
  const child = spawn(process.execPath, [join(home, 'run.mjs')], { stdio: ['ignore', 'pipe', 'inherit'] })
  running.push(child)
  let words = ''
  await new Promise<void>((resolve, reject) => {
    child.stdout?.setEncoding('utf8').on('data', (part: string) => {
      words += part
      if (words.includes('Stop with Ctrl-C.\n')) resolve()
    })
    child.once('exit', (code) => reject(new Error(`ended with ${code}: ${words}`)))
  })
  return { child, lines: words.trimEnd().split('\n') }
}

const ended = (child: ChildProcess): Promise<unknown> => new Promise((resolve) => child.once('exit', resolve))

/** Holds the usual port, where nothing else on this machine does. */
async function usualPortTaken(): Promise<() => Promise<void>> {
  const holder = createServer()
  const own = await new Promise<boolean>((resolve) => {
    holder.once('error', () => resolve(false)).listen(PAGE_PORT, '127.0.0.1', () => resolve(true))
  })
  return () => new Promise((resolve) => (own ? holder.close(() => resolve()) : resolve()))
}

describe('the page served where there is no window', () => {
  it.each(['SIGINT', 'SIGTERM'] as const)(
    'is served until the process is told to stop (%s), then ends with 0',
    async (signal) => {
      const { child, lines } = await served()
      const address = lines[0]?.match(/http:\/\/127\.0\.0\.1:\d+\//)?.[0] ?? ''
      expect(lines[0]).toBe(`No window here: open this address in a browser: ${address}`)
      expect(await (await fetch(address)).text()).toContain('Sill')
      const end = ended(child)
      child.kill(signal)
      expect(await end).toBe(0)
      await expect(fetch(address)).rejects.toThrow()
    }
  )

  it('ends with 0 where it is told to stop while it says its first line', async () => {
    await writeFile(
      join(home, 'at-once.mjs'),
      `const say = console.log\nconsole.log = (line) => { say(line); process.kill(process.pid, 'SIGINT') }\nawait import('./run.mjs')\n`
    )
    const child = spawn(process.execPath, [join(home, 'at-once.mjs')], { stdio: 'ignore' })
    running.push(child)
    expect(await ended(child)).toBe(0)
  })

  it('says in one line, where the usual port is taken, that earlier work is at the other address', async () => {
    const free = await usualPortTaken()
    const { child, lines } = await served()
    await free()
    expect(lines).toHaveLength(3)
    expect(lines[0]).not.toContain(`:${PAGE_PORT}/`)
    expect(lines[1]).toBe(
      `Another program holds port ${PAGE_PORT}, so a free one is used: unsaved work that was kept earlier is at http://127.0.0.1:${PAGE_PORT}/ and not here.`
    )
    child.kill('SIGINT')
    expect(await ended(child)).toBe(0)
  })
})
