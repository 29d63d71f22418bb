import { spawn } from 'node:child_process'
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'rolldown'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { versionsFolder } from '../../main/files/versions'
import { documentOf, numberOf } from './numbered-document'
import { counted, LIMIT_MS, numbersFrom, SEED } from './proving'

const SAVES = counted(1_000)
/** A process is killed at most so long after its first word: some dozens of saves, ms. */
const LONGEST_MS = 60

let folder = ''
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'sillwright-killed-'))
  await build({
    input: { saver: fileURLToPath(new URL('saver.ts', import.meta.url)) },
    platform: 'node',
    logLevel: 'silent',
    output: { dir: folder, format: 'esm', entryFileNames: '[name].mjs' }
  })
})
afterAll(() => rm(folder, { recursive: true, force: true }))

/** Starts a saver, kills it after a while, and gives the number of the last save it was told of. */
function killedAfter(ms: number, path: string, first: number): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(folder, 'saver.mjs'), path, String(first)], {
      stdio: ['ignore', 'pipe', 'pipe']
    })
    let lines = ''
    let wrong = ''
    child.stderr.on('data', (part: Buffer) => {
      wrong += part.toString()
    })
    child.stdout.on('data', (part: Buffer) => {
      if (lines === '') setTimeout(() => child.kill('SIGKILL'), ms)
      lines += part.toString()
    })
    child.on('close', (_code, signal) => {
      if (signal !== 'SIGKILL') return reject(new Error(`the saver ended by itself: ${wrong}`))
      const told = lines
        .split('\n')
        .slice(0, -1)
        .filter((line) => line !== 'ready')
      resolve(Number(told.at(-1) ?? first))
    })
  })
}

describe('a save that is killed', () => {
  it(
    `leaves the old document or the new one, whole, each of ${SAVES} times`,
    async () => {
      const next = numbersFrom(SEED)
      const path = join(folder, 'files', 'sill.json')
      await mkdir(join(folder, 'files'))
      await writeFile(path, documentOf(0))
      let stands = 0
      let saves = 0
      let newer = 0
      for (let kill = 0; kill < SAVES; kill += 1) {
        const told = await killedAfter(next() * LONGEST_MS, path, stands)
        const found = numberOf(await readFile(path, 'utf8'))
        // Every save that was answered lasts; the one that was going on is there or it is not.
        expect([told, told + 1], `kill ${kill}`).toContain(found)
        if (found === told + 1) newer += 1
        saves += told - stands
        stands = found ?? told
      }
      // What a killed copy left is a draft by its name, and no version.
      const kept = (await readdir(versionsFolder(path))).filter((name) => name.endsWith('.json'))
      const whole = await Promise.all(
        kept.map(async (name) => numberOf(await readFile(join(versionsFolder(path), name), 'utf8')))
      )
      expect(whole.filter((each) => each === null)).toEqual([])
      console.log(
        `killed saves: seed ${SEED}, ${SAVES} kills, ${saves} saves answered between them, ` +
          `${newer} kills found the new document and ${SAVES - newer} the old, 0 torn; ` +
          `${kept.length} kept versions, all whole`
      )
    },
    LIMIT_MS
  )
})
