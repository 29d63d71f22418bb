import { readdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { writePdf } from '../../main/services/pdf'
import { docDefinition } from '../../shared-model/paper'
import type { SheetData } from '../../shared-model/sheet'
import { demoSheet } from '../paper/demo-sheet'
import { benchForTests } from './page'

const bench = benchForTests()
const assets = fileURLToPath(new URL('../../out/renderer/assets', import.meta.url))

for (const paper of ['letter', 'a4'] as const) {
  test(`the page's worker in the browser and Node write the same bytes on ${paper}, streams left open`, async () => {
    const worker = readdirSync(assets).find((name) => /^plan-worker-.*\.js$/.test(name))
    if (worker === undefined) throw new Error('the built page has no worker')
    const sheet = demoSheet(paper)
    const { page, complaints } = await bench.open()
    const inPage = Buffer.from(await page.evaluate(askWorker, { address: `/assets/${worker}`, sheet, paper }), 'base64')
    const inNode = Buffer.from(await writePdf(docDefinition(sheet, { paper, uncompressed: true })))
    expect(inNode.length).toBeGreaterThan(100_000)
    expect(inPage.length).toBe(inNode.length)
    expect(inPage.equals(inNode)).toBe(true)
    expect(complaints).toEqual([])
  })
}

/** Asks the built worker for a document in the wire form of comlink, and gives its bytes as base 64. */
const askWorker = async (asked: {
  readonly address: string
  readonly sheet: SheetData
  readonly paper: 'letter' | 'a4'
}): Promise<string> => {
  const worker = new Worker(asked.address, { type: 'module' })
  try {
    const pdf = await new Promise<Uint8Array>((resolve, reject) => {
      worker.onerror = (event) => reject(new Error(event.message))
      worker.onmessage = ({ data }: MessageEvent<{ type?: string; value?: { pdf?: Uint8Array } }>) => {
        if (data.type === 'RAW' && data.value?.pdf !== undefined) resolve(data.value.pdf)
        else reject(new Error(JSON.stringify(data)))
      }
      const raw = (value: unknown) => ({ type: 'RAW', value })
      worker.postMessage({
        id: '1',
        type: 'APPLY',
        path: ['pages'],
        argumentList: [raw(asked.sheet), raw(asked.paper), raw(true)]
      })
    })
    let letters = ''
    for (const byte of pdf) letters += String.fromCharCode(byte)
    return btoa(letters)
  } finally {
    worker.terminate()
  }
}
