import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
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
