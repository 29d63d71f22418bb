import { readFile } from 'node:fs/promises'
import type { BrowserContext, Page } from 'playwright-core'
import { type Design, parseDesignText } from '../../shared-model/design'

export interface SavedFile {
  readonly name: string
  readonly path: string
  readonly design: Design
}

/** Saves by the platform's key and reads what was written. */
export async function saveDesign(page: Page): Promise<SavedFile> {
  const waiting = page.waitForEvent('download')
  await page.keyboard.press('Control+s')
  const download = await waiting
  const path = await download.path()
  const parsed = parseDesignText(await readFile(path, 'utf8'))
  if (!parsed.ok) throw new Error(`the saved file cannot be read: ${JSON.stringify(parsed.problem)}`)
  return { name: download.suggestedFilename(), path, design: parsed.value }
}

export interface GivenFile {
  readonly name: string
  readonly text: string
}

/** Opens a file by the platform's key, as it would be picked in the system's dialog. */
export async function openFile(page: Page, file: GivenFile): Promise<void> {
  const asked = page.waitForEvent('filechooser')
  await page.keyboard.press('Control+o')
  await (await asked).setFiles({
    name: file.name,
    mimeType: 'application/json',
    buffer: Buffer.from(file.text, 'utf8')
  })
}

/** What the window says of the file: saved, changed, or not in a file yet. */
export const fileState = (page: Page): Promise<string | null> =>
  page.getByRole('status', { name: 'File state' }).textContent()

/** The designs that the browser's own database keeps for recovery, as text. */
export const keptForRecovery = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const opening = indexedDB.open('sillwright')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const shelf = opening.result.transaction('values').objectStore('values')
          const asked = shelf.getAll(IDBKeyRange.bound('recovery:', 'recovery;'))
          asked.onsuccess = () => {
            opening.result.close()
            resolve(asked.result.map((each) => String(each?.design)).join())
          }
        }
      })
  )

/**
 * A file in the origin's own file system stands for every file that is picked in the browser's dialogs from the next
 * load on: real handles of the browser, shared by all tabs. `named` in the page says which.
 */
export async function pickFromOrigin(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    const picked = async () => {
      const name = localStorage.getItem('picked') ?? 'sill.design.json'
      return (await navigator.storage.getDirectory()).getFileHandle(name, { create: true })
    }
    Object.assign(globalThis, { showOpenFilePicker: async () => [await picked()], showSaveFilePicker: picked })
  })
}

/** Names the file that is picked next, and writes it as another program would where a text is given. */
export const pickNext = (page: Page, name: string, text?: string): Promise<void> =>
  page.evaluate(
    async ([file = '', words]) => {
      localStorage.setItem('picked', file)
      if (words === undefined) return
      const handle = await (await navigator.storage.getDirectory()).getFileHandle(file, { create: true })
      const stream = await handle.createWritable()
      await stream.write(words)
      await stream.close()
    },
    [name, text]
  )

/** What stands in a file of the origin's own file system; read again where it was just being written. */
export const textIn = (page: Page, name: string): Promise<string> =>
  page.evaluate(async (file) => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle(file)
    for (;;) {
      try {
        return await (await handle.getFile()).text()
      } catch (error) {
        if (!(error instanceof DOMException && error.name === 'NotReadableError')) throw error
      }
    }
  }, name)
