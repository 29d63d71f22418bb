import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { DEMOS, parseDesignText, printDesign } from '../../shared-model/design'
import { problemText } from '../../shared-model/words'
import { chooseListed, openDemo, openRoom, planSettled, totals, typeIn } from './acts'
import { openFile, saveDesign } from './design-files'
import { benchForTests } from './page'

const bench = benchForTests()
const kitchen = DEMOS[0]
if (kitchen === undefined) throw new Error('there is no demo design')

const findings = (page: Page) => page.locator('#findings-list')
const showFindings = (page: Page): Promise<void> => page.getByRole('button', { name: /Show findings/ }).click()
const open = async () => {
  const opened = await bench.open()
  await openDemo(opened.page, kitchen.name)
  return opened
}

const text = printDesign(kitchen.design)
const malformed = [
  { name: 'torn.json', text: text.slice(0, 900), says: /torn\.json cannot be opened\. The file is not a document/ },
  { name: 'empty.json', text: '{}', says: /empty\.json cannot be opened\. The file does not say what it is/ },
  {
    name: 'negative.json',
    text: text.replace('"lengthMm": 700', '"lengthMm": -700'),
    says: /negative\.json cannot be opened\..*-700 mm.*20 mm to 12000 mm/
  },
  {
    name: 'no-seat.json',
    text: text.replace('"seatId": "seat1"', '"seatId": "nowhere"'),
    says: /no-seat\.json cannot be opened\..*seat that is not there/
  }
]

test('a malformed design file is named with its fault, and the open design stays as it was', async () => {
  const { page, complaints } = await open()
  for (const file of malformed) {
    await openFile(page, file)
    await expect.poll(() => page.getByRole('alert').first().textContent()).toMatch(file.says)
    await page.getByRole('button', { name: 'Put away' }).click()
  }
  expect((await saveDesign(page)).design).toEqual(kitchen.design)
  expect(complaints).toEqual([])
})

/** A figure of the kitchen design as it stands in its file, another, and the bounds that are said. */
const impossible = [
  { what: 'a negative wall', from: /"averageWallMm": 2,/, to: '"averageWallMm": -2,', least: 0.1, most: 50 },
  { what: 'a wall over half the side', from: /"averageWallMm": 2,/, to: '"averageWallMm": 45,', least: 0.1, most: 40 },
  { what: 'a bottom wider than its top', from: /"bottomMm": 35,/, to: '"bottomMm": 200,', least: 0, most: 49 },
  { what: 'a level above the bore', from: /"fillShare": 0\.62/, to: '"fillShare": 1.2', least: 0, most: 1 },
  { what: 'a batch of a million', from: /"quantity": 1,/, to: '"quantity": 1000000,', least: 1, most: 1000 },
  { what: 'water of EC 40', from: /"sourceEcMsPerCm": 0\.3/, to: '"sourceEcMsPerCm": 40', least: 0, most: 20 },
  { what: 'a feed of EC 40', from: /"targetEcMsPerCm": 1\.5/, to: '"targetEcMsPerCm": 40', least: 0, most: 20 }
]

test('a figure that cannot be is named with both bounds, and the open design stays as it was', async () => {
  const { page, complaints } = await open()
  await planSettled(page)
  for (const { what, from, to, least, most } of impossible) {
    const given = text.replace(from, to)
    const parsed = parseDesignText(given)
    if (parsed.ok) throw new Error(`${what} is let in`)
    const [problem] = parsed.problem
    if (problem === undefined) throw new Error(`${what} is refused without a reason`)
    expect(problem.figures, what).toMatchObject({ least, most })
    await openFile(page, { name: 'bad.json', text: given })
    await expect
      .poll(() => page.getByRole('alert').first().textContent())
      .toContain(problemText(problem, kitchen.workshop.shows))
    await page.getByRole('button', { name: 'Put away' }).click()
  }
  expect((await saveDesign(page)).design).toEqual(kitchen.design)
  expect(complaints).toEqual([])
})

test('a channel longer than the sill is kept, named as a stop with both lengths, and mended by undo', async () => {
  const { page } = await open()
  await chooseListed(page, 1)
  await typeIn(page.getByLabel('Cut length', { exact: true }), '2 m')
  await showFindings(page)
  await expect
    .poll(() => findings(page).textContent())
    .toMatch(/Too long for the sill\. With its ends it is 2004 mm; the sill has room for 1476 mm/)
  expect((await saveDesign(page)).design.channels[0]?.lengthMm).toBe(2000)
  await page.getByRole('button', { name: 'Undo', exact: true }).click()
  await expect.poll(() => findings(page).textContent()).not.toMatch(/Too long for the sill/)
})

test('a cup wider than the channel’s face is kept and named as a stop', async () => {
  const { page } = await open()
  await chooseListed(page, 1)
  await page.getByRole('button', { name: /^Site 1\b/ }).click()
  // Rim 96 mm on a face of 80 mm.
  await page.getByLabel('Cup', { exact: true }).selectOption({ label: 'Drinking cup, 16 oz' })
  await showFindings(page)
  await expect.poll(() => findings(page).textContent()).toMatch(/Stop.*Drinking cup, 16 oz does not go in/)
  const saved = (await saveDesign(page)).design
  expect(saved.seats[0]?.stack).toContainEqual({ kind: 'cup', partId: 'drinking-cup-16oz' })
  expect(saved.channels).toEqual(kitchen.design.channels)
})

test('stock shorter than the piece is named, and the rest of the plan stands', async () => {
  const { page } = await open()
  await openRoom(page, 'Workshop')
  const bars = page.getByRole('table', { name: /^Stock on offer/ })
  const length = bars.getByRole('textbox').first()
  expect(await length.inputValue()).toBe('2500 mm')
  await typeIn(length, '500')
  await planSettled(page)
  await showFindings(page)
  await expect.poll(() => findings(page).textContent()).toMatch(/The stock does not reach.*700 mm/)
  expect((await totals(page)).Plants).toBe('10')
  expect((await saveDesign(page)).design).toEqual(kitchen.design)
})

test('a missing price is named, and never counts as nought', async () => {
  const { page } = await open()
  await openRoom(page, 'Workshop')
  await typeIn(page.getByLabel(/^Price of .*2500 mm$/), '')
  await planSettled(page)
  expect((await totals(page))['Cost of one']).toBe('prices missing')
  await openRoom(page, 'Materials')
  await page.getByRole('heading', { name: '1 without a price' }).waitFor()
  await page.getByRole('rowheader', { name: 'Together, without what has no price' }).waitFor()
  await showFindings(page)
  await expect.poll(() => findings(page).textContent()).toMatch(/No price for PVC-U square downpipe, 80 x 80 mm/)
})

test('a typed length that cannot be read stays as typed with the reason, and Escape brings the old one back', async () => {
  const { page } = await open()
  await chooseListed(page, 1)
  const field = page.getByLabel('Cut length', { exact: true })
  const reasons: string[] = []
  for (const typed of ['about 70', '7 1/2', '1.500', '0', '-40']) {
    await typeIn(field, typed)
    expect(await field.inputValue()).toBe(typed)
    expect(await field.getAttribute('aria-invalid')).toBe('true')
    const note = await field.getAttribute('aria-describedby')
    reasons.push((await page.locator(`[id="${note}"]`).textContent()) ?? '')
    await field.press('Escape')
    expect(await field.inputValue()).toBe('700 mm')
  }
  for (const reason of reasons) expect(reason).toMatch(/\w.{10,}\.$/)
  expect((await saveDesign(page)).design).toEqual(kitchen.design)
})
