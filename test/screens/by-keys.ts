import type { Locator, Page } from 'playwright-core'

/** More stops than the window has. */
const MOST_STOPS = 200

/** Tab, again and again, until the focus is there. */
export async function tabTo(page: Page, target: Locator, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  await target.waitFor()
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press(key)
  }
  throw new Error(`the key ${key} never reaches ${target}`)
}

/** Goes to a button and presses it. */
export async function press(page: Page, target: Locator): Promise<void> {
  await tabTo(page, target)
  await page.keyboard.press('Enter')
}

/** Goes to a field, types over what stands there, and sets it. */
export async function type(page: Page, target: Locator, text: string): Promise<void> {
  await tabTo(page, target)
  await page.keyboard.press('Control+a')
  await page.keyboard.type(text)
  await page.keyboard.press('Enter')
}
