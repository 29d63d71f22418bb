import { readFile } from 'node:fs/promises'
import type { Locator, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { openDemo, openRoom, planSettled, totals, typeIn } from './acts'
import { benchForTests } from './page'

const bench = benchForTests()
const MARKET = 'Eighteen planters for sale, in inches'

async function market(room: 'Price' | 'Materials' | 'Workshop'): Promise<Page> {
  const { page } = await bench.open({ width: 1280, height: 720 })
  await openDemo(page, MARKET)
  await openRoom(page, room)
  await planSettled(page)
  return page
}

const costOfOne = async (page: Page): Promise<string> => (await totals(page))['Cost of one'] ?? ''

/** Cells on the clipboard of a spreadsheet, pasted by the keyboard's own event where the mark stands. */
const pasteInto = (field: Locator, text: string): Promise<void> =>
  field.evaluate((input, cells) => {
    const clipboardData = new DataTransfer()
    clipboardData.setData('text/plain', cells)
    input.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }))
  }, text)

describe('prices as they are entered', () => {
  test('the cost and the price change while the rate is typed, and one step back undoes the whole of it', async () => {
    const page = await market('Price')
    const ways = page.getByRole('table', { name: 'Ways of selling side by side' })
    const shown = ways.getByRole('row', { name: /Price the buyer sees/ }).getByRole('cell')
    const before = await shown.first().innerText()
    const hour = page.getByLabel('Your hour')
    await hour.focus()
    await hour.press('Control+a')
    await page.keyboard.type('99')
    await planSettled(page)
    await expect.poll(() => shown.first().innerText()).not.toBe(before)
    expect(await hour.evaluate((input) => document.activeElement === input)).toBe(true)
    await page.keyboard.type('.50')
    await hour.press('Enter')
    await page.getByRole('button', { name: 'Undo' }).click()
    await planSettled(page)
    await expect.poll(() => shown.first().innerText()).toBe(before)
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true)
  })

  test('rows of a spreadsheet pasted into the table go over the cells from the focused one on, as one step', async () => {
    const page = await market('Workshop')
    const cost = await costOfOne(page)
    const box = page.getByLabel('Price of Downspout end caps, box of 12', { exact: true })
    await box.focus()
    await pasteInto(box, '99.00\tRiver yard\r\n2.00\tRiver yard\r\n')
    expect(await box.inputValue()).toContain('99.00')
    expect(await page.getByLabel('Price of Downspout end cap', { exact: true }).inputValue()).toContain('2.00')
    await planSettled(page)
    expect(await costOfOne(page)).not.toBe(cost)
    await page.getByRole('button', { name: 'Undo' }).click()
    await planSettled(page)
    expect(await costOfOne(page)).toBe(cost)
    await pasteInto(box, 'dear\tRiver yard\r\n')
    expect(await page.getByRole('alert').filter({ hasText: 'Nothing was taken' }).innerText()).toContain('Row 1, Price')
    expect(await costOfOne(page)).toBe(cost)
  })

  test('rates over 100 %, a price below nought and no unit at all are refused in words', async () => {
    const page = await market('Price')
    const refused = async (label: string, text: string): Promise<string> => {
      const field = page.getByLabel(label).first()
      await typeIn(field, text)
      const note = await field.getAttribute('aria-describedby')
      const said = await page.locator(`[id="${note}"]`).innerText()
      await field.press('Escape')
      return said
    }
    expect(await refused('Tax (%)', '101')).toMatch(/0.*100/)
    expect(await refused('Fee (%)', '120')).toMatch(/0.*100/)
    expect(await refused('Margin wanted (%)', '100')).toMatch(/0.*99\.99/)
    expect(await refused('Given price before tax', '-5')).not.toBe('')
    expect(await refused('How many to make at once', '0')).toMatch(/1/)
    expect(await refused('How many to make at once', '1000000000')).toMatch(/1.*1,?000/)
    expect(await refused('Hours worked in a day (h)', '0')).toMatch(/1.*24/)
    expect(await refused('Tax on what you buy (%)', '101')).toMatch(/0.*100/)
  })

  test('fee and margin that take the whole price leave no price, and it says which is too high', async () => {
    const page = await market('Price')
    await typeIn(page.getByRole('group', { name: 'Own stall' }).getByLabel('Fee (%)'), '80')
    await planSettled(page)
    const why = page.getByRole('region', { name: 'What has no price' })
    await expect.poll(() => why.innerText()).toContain('Own stall: no price leaves this margin')
    expect(await why.innerText()).toContain('Fees and margin together')
    // It stands among the findings too, as a stop, with the way to the field.
    await openRoom(page, 'Board')
    await page.getByRole('button', { name: /1 stop.*Show findings/ }).click()
    const [first] = await page.locator('#findings-list').getByRole('listitem').all()
    if (first === undefined) throw new Error('nothing is found')
    expect(await first.innerText()).toContain('no price leaves this margin')
    await first.getByRole('button', { name: 'Show' }).click()
    await page.getByRole('main', { name: 'Price' }).waitFor()
  })
})

describe('what follows from the prices', () => {
  test('the ladder names the bars and packs that each size opens', async () => {
    const page = await market('Price')
    const ladder = page.getByRole('table', { name: 'Batch sizes and what they come to' })
    await ladder.getByRole('row').nth(8).waitFor()
    const opened = await ladder.locator('tbody tr td:last-child').allInnerTexts()
    expect(opened[0]).toBe('')
    expect(opened.join('; ')).toMatch(/Downspout, plain, 4 in nominal, aluminium, \d+ in/)
    expect(opened.join('; ')).toMatch(/Slotted cups 2 in, bag of \d+/)
  })

  test('material stands by line with the unused rest beside it, labour by step, and they add up', async () => {
    const page = await market('Price')
    await page.getByText('Material by line, labour by step').click()
    const sum = async (name: string, column: number): Promise<number> => {
      const cells = await page
        .getByRole('table', { name, exact: true })
        .locator(`tbody tr > :nth-child(${column})`)
        .allInnerTexts()
      return cells.reduce((all, text) => all + Math.round(Number.parseFloat(text) * 100), 0)
    }
    const bar = async (name: string): Promise<number> =>
      Math.round(
        Number.parseFloat(
          await page.locator('.cost-bar').filter({ hasText: name }).first().locator('.cost-figure').innerText()
        ) * 100
      )
    const cost = page.getByRole('region', { name: 'Cost of one' })
    await cost.waitFor()
    expect(await sum('Material by line', 2)).toBe(
      Math.round(Number.parseFloat(await cost.locator('.cost-bar').first().locator('.cost-figure').innerText()) * 100)
    )
    expect(Math.abs((await sum('Labour by step', 4)) / 18 - (await bar('Labour')))).toBeLessThan(1)
  })

  test('the shopping list stands once, by supplier, and goes out as CSV with its prices', async () => {
    const page = await market('Materials')
    expect(await page.getByRole('table', { name: /shopping/i }).count()).toBe(1)
    const waiting = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Write the shopping list as CSV' }).click()
    const text = await readFile(await (await waiting).path(), 'utf8')
    const [head, ...rows] = text.trim().split('\r\n')
    expect(head).toContain('Together (USD)')
    const suppliers = rows.map((row) => row.split(',')[0] ?? '')
    expect(suppliers).toEqual(suppliers.toSorted((a, b) => (a < b ? -1 : 1)))
  })

  test('what a built batch leaves over is on the shelf, and the next plan takes it from there', async () => {
    const page = await market('Materials')
    await openRoom(page, 'Cuts')
    await planSettled(page)
    await page.getByRole('button', { name: 'Mark as built' }).click()
    await openRoom(page, 'Workshop')
    const shelf = page.getByRole('table', { name: 'Shelf' })
    expect(await shelf.getByLabel('How much of Waterproof labels, roll of 100').inputValue()).toBe('82')
    await openRoom(page, 'Materials')
    await planSettled(page)
    const labels = page.getByRole('row', { name: /^☐ Labels/ }).getByRole('cell')
    // Needed 18, from the shelf 18, bought none.
    expect((await labels.allInnerTexts()).slice(-4)).toEqual(['18', '18', '0', '0'])
  })
})
