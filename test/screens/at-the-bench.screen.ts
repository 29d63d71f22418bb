import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS } from '../../shared-model/design'
import { openDemo, openRoom, planSettled, typeIn } from './acts'
import { benchForTests } from './page'

const bench = benchForTests()
const [kitchen, market] = DEMOS
if (kitchen === undefined || market === undefined) throw new Error('there are not two demo designs')

/** The cuts screen with its full plan in place. */
async function atCuts(page: Page, demo: { readonly name: string }): Promise<void> {
  await openDemo(page, demo.name)
  await openRoom(page, 'Cuts')
  await pieces(page).first().waitFor()
}

const pieces = (page: Page) => page.getByRole('button', { name: /^Piece \S+, / })
const namesOf = async (page: Page): Promise<readonly string[]> =>
  pieces(page).evaluateAll((all) => all.map((each) => each.getAttribute('aria-label') ?? ''))
const settled = async (page: Page, holds: (names: readonly string[]) => boolean): Promise<readonly string[]> => {
  await expect.poll(async () => holds(await namesOf(page)), { timeout: 30_000 }).toBe(true)
  return namesOf(page)
}
const barOf = (name: string): string => /on bar (\w+)/.exec(name)?.[1] ?? ''

test('a piece that is chosen on a bar is chosen on the board, and the channel’s pieces are marked on the bars', async () => {
  const { page, complaints } = await bench.open()
  await atCuts(page, kitchen)
  await pieces(page).filter({ hasText: /^1\b/ }).click()
  await expect.poll(() => page.locator('.bar-piece.of-chosen').count()).toBe(1)
  await page.getByRole('button', { name: 'Show its channel on the board' }).click()
  await page.getByRole('application').waitFor()
  await expect.poll(() => page.getByRole('region', { name: 'Side section' }).textContent()).toMatch(/Side section\s*1/)
  expect(complaints).toEqual([])
})

test('a piece pinned to a bar, by keys alone, is cut from it and the rest is planned around it; undo lets it go', async () => {
  const { page, complaints } = await bench.open()
  await atCuts(page, market)
  const before = await namesOf(page)
  const first = before.find((name) => name.startsWith('Piece 1/1,')) ?? ''
  const other = before.map(barOf).find((mark) => mark !== barOf(first)) ?? ''
  await page.getByRole('button', { name: /^Piece 1\/1,/ }).focus()
  await page.keyboard.press('Enter')
  const field = page.getByLabel('Cut it from')
  await field.focus()
  await field.selectOption({
    label: (await field.locator('option').allTextContents()).find((text) => text.startsWith(`bar ${other},`)) ?? ''
  })
  const after = await settled(page, (names) =>
    names.some((name) => name.startsWith('Piece 1/1,') && name.endsWith('pinned'))
  )
  expect(after).toHaveLength(before.length)
  await page.keyboard.press('Control+z')
  await settled(page, (names) => names.every((name) => !name.endsWith('pinned')))
  expect(complaints).toEqual([])
})

test('a spoiled piece is cut again from what is left, and the sheet that is printed then carries only the rest and a new revision', async () => {
  const { page, complaints } = await bench.open()
  await atCuts(page, market)
  const before = await namesOf(page)
  await page.getByRole('button', { name: /^Piece 1\/4,/ }).click()
  await page.getByRole('button', { name: 'It is cut', exact: true }).click()
  await settled(page, (names) => names.some((name) => name.startsWith('Piece 1/4,') && name.endsWith(', cut')))
  await page.getByRole('button', { name: 'A hole is wrong' }).click()
  const after = await settled(page, (names) => names.some((name) => name.endsWith(', spoiled')))
  expect(after).toHaveLength(before.length + 1)
  expect(after.some((name) => name.startsWith('Piece 1/4,') && name.endsWith('to cut'))).toBe(true)
  await openRoom(page, 'Build sheet')
  await page.getByRole('button', { name: 'Write the PDF' }).waitFor()
  expect(await page.getByLabel('Revision').inputValue()).not.toBe(market.design.revision)
  expect(await page.getByLabel('What is done already too, not only the rest').isChecked()).toBe(false)
  expect(complaints).toEqual([])
})

test('a bar found shorter than planned holds less, a longer one is refused with both bounds, and it can be taken back', async () => {
  const { page, complaints } = await bench.open()
  await atCuts(page, market)
  const before = await namesOf(page)
  // A new bar of 10 ft: an offcut is too short to lose a piece and keep two.
  const bar = barOf(before.at(-1) ?? '')
  await page.getByRole('button', { name: new RegExp(`^Bar ${bar} `) }).click()
  const length = page.getByLabel('Its length as found')
  await length.fill('900 in')
  await length.press('Enter')
  const refused = (await page.getByRole('alert').first().textContent()) ?? ''
  expect(refused).toContain('It must be 0.24 in to 120 in.')
  await length.fill('60 in')
  await length.press('Enter')
  // 60 in hold two pieces of 23 3/4 in with their cuts, not three.
  await settled(page, (names) => names.filter((name) => barOf(name) === bar).length === 2)
  await page.getByRole('button', { name: 'Nothing is cut from it after all' }).click()
  expect(await settled(page, (names) => names.filter((name) => barOf(name) === bar).length > 2)).toEqual(before)
  expect(complaints).toEqual([])
})

test('every cut plan says how good it is', async () => {
  const { page } = await bench.open()
  await atCuts(page, kitchen)
  for (const each of await page.getByRole('region', { name: /^Bars of / }).all())
    await each.getByText('Proven least').waitFor()
})

test('how long a step took is kept in the workshop as measured', async () => {
  const { page, complaints } = await bench.open()
  await openDemo(page, kitchen.name)
  await openRoom(page, 'Drilling & steps')
  const taken = page.getByRole('region', { name: 'How long it took' })
  await taken.getByLabel(/^It took/).fill('45')
  await taken.getByLabel(/^It took/).press('Enter')
  await page.getByText(/^Measured: .* s for each/).waitFor()
  await openRoom(page, 'Workshop')
  await page
    .getByText(/^measured \d{4}-\d\d-\d\d$/)
    .first()
    .waitFor()
  expect(complaints).toEqual([])
})

test('a piece is pinned and unpinned by click, and a pin that cannot hold says why beside the piece', async () => {
  const { page, complaints } = await bench.open()
  await atCuts(page, market)
  const alone = barOf((await namesOf(page)).find((name) => name.startsWith('Piece 1/1,')) ?? '')
  await page.getByRole('button', { name: /^Piece 1\/1,/ }).click()
  await page.getByRole('button', { name: `Pin it to bar ${alone}` }).click()
  const isFirst = (name: string): boolean => name.startsWith('Piece 1/1,') && name.endsWith('pinned')
  const held = barOf((await settled(page, (names) => names.some(isFirst))).find(isFirst) ?? '')
  // The offcut of 26 in, by whatever letter it goes now, holds one piece of 23 3/4 in.
  await page.getByRole('button', { name: /^Piece 1\/2,/ }).click()
  const field = page.getByLabel('Cut it from')
  const labels = await field.locator('option').allTextContents()
  await field.selectOption({ label: labels.find((text) => text.startsWith(`bar ${held},`)) ?? '' })
  const panel = page.getByRole('region', { name: 'Piece 1/2' })
  await panel.getByRole('alert').waitFor()
  expect(await panel.getByRole('alert').textContent()).toContain('There is no room for it there any more')
  await panel.getByRole('button', { name: 'Unpin it' }).click()
  await panel.getByRole('alert').waitFor({ state: 'detached' })
  await settled(page, (names) => names.filter((name) => name.endsWith('pinned')).length === 1)
  expect(complaints).toEqual([])
})

test('a piece longer than any bar is a stop that names it and the longest bar; with joins allowed it is cut in parts', async () => {
  const { page, complaints } = await bench.open()
  await openDemo(page, market.name)
  await openRoom(page, 'Workshop')
  const stock = page.getByRole('table', { name: 'Stock on offer' }).getByLabel(/^Length of /)
  for (let at = 0; at < (await stock.count()); at += 1) await typeIn(stock.nth(at), '20 in')
  await typeIn(page.getByLabel('Length of the offcut').first(), '20 in')
  await openRoom(page, 'Cuts')
  await planSettled(page)
  await page.getByText(/^Piece 1\/1, 23 3\/4 in: the longest bar is /).waitFor()
  expect(
    await page
      .getByText(/\d+ stop/)
      .first()
      .textContent()
  ).not.toMatch(/^0 /)
  await openRoom(page, 'Workshop')
  await page.getByLabel('Pieces may be joined with a coupling').check()
  await openRoom(page, 'Cuts')
  const parts = await settled(page, (names) => names.some((name) => name.startsWith('Piece 1/1a,')))
  // Two parts of each of the eighteen pieces.
  expect(parts).toHaveLength(36)
  await page.getByRole('button', { name: /^Piece 1\/1a,/ }).click()
  await page.getByRole('button', { name: 'Show its channel on the board' }).click()
  await expect.poll(() => page.getByRole('region', { name: 'Side section' }).textContent()).toMatch(/Side section\s*1/)
  expect(complaints).toEqual([])
})

test('marked as built, used offcuts leave the rack and kept ones lie on it with where they came from; undo takes it back', async () => {
  const { page, complaints } = await bench.open()
  await atCuts(page, market)
  const rack = async (): Promise<readonly string[]> => {
    await openRoom(page, 'Workshop')
    return page.getByLabel('Came from').evaluateAll((all) => all.map((each) => (each as HTMLInputElement).value))
  }
  const before = await rack()
  await openRoom(page, 'Cuts')
  await page.getByRole('button', { name: 'Mark as built' }).click()
  await page.getByText(/^Marked as built: 1 off the rack, 1 on it\./).waitFor()
  expect(await rack()).toEqual([market.design.title])
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: 'Undo' }).click()
  expect(await rack()).toEqual(before)
  expect(complaints).toEqual([])
})

test('sheets are drawn from their datum corner, with how few could do and how many one holds at most', async () => {
  const { page, complaints } = await bench.open()
  await atCuts(page, market)
  const collars = page.getByRole('region', { name: 'Collars, risers and cup bottoms' })
  await collars.getByText(/However they are laid, no fewer than 1 would do/).waitFor()
  await collars
    .getByText(
      /measure across and up from it\. A whole sheet like it holds \d+; (no layout holds more than|more is not possible)/
    )
    .waitFor()
  expect(complaints).toEqual([])
})
