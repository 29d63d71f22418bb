import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { changeCup, DEMOS, type Design, editChannels, printDesign } from '../../shared-model/design'
import { CATALOGUE } from '../../shared-model/parts'
import { evaluate } from '../../shared-model/plan'
import { findingText, HOLD_NAMES, sayIn } from '../../shared-model/words'
import { chooseListed, figuresIn, openDemo, totals } from './acts'
import { dragTo, release } from './by-mouse'
import { openFile } from './design-files'
import { benchForTests } from './page'
import { today } from './today'

const bench = benchForTests()
const kitchen = DEMOS[0]
if (kitchen === undefined) throw new Error('there is no demo design')
const { workshop } = kitchen
const say = sayIn(workshop.shows, workshop.currency)
const planOf = (design: Design) => evaluate(design, workshop, today(), { cuts: 'left-out' })
const section = (page: Page) => page.getByRole('region', { name: 'Side section' })

/** Litres and air gap of the first channel and the weight of all, as worked out for a design. */
function figuresOf(design: Design) {
  const { channels, load } = planOf(design)
  const water = channels[0]?.water
  return {
    solution: say.volume(water?.litres ?? 0),
    gap: gapSaid(water?.leastGapMm ?? 0),
    filled: say.mass(load.filledG)
  }
}

/** A cup that stands in the solution has no gap: how deep it stands is said instead. */
const gapSaid = (gapMm: number): string => {
  const said = say.length(Math.abs(gapMm))
  if (said === say.length(0)) return 'none, the cup touches'
  return gapMm < 0 ? `${said} deep` : said
}

async function figuresShown(page: Page) {
  const shown = await figuresIn(section(page).locator('dl').first())
  const { Solution: solution, 'Air gap': gap, 'Cup in solution': stands } = shown
  return { solution, gap: gap ?? stands, filled: (await totals(page)).Filled }
}

test('another cup in a seat brings other saws, another drawing of the seat and other findings', async () => {
  const { page, complaints } = await bench.open()
  await openDemo(page, kitchen.name)
  await chooseListed(page, 1)
  await page.getByRole('button', { name: /^Site 1\b/ }).click()
  const saws = page.getByRole('region', { name: 'Saws that seat it' })
  const drawing = section(page).getByRole('img', { name: /^Cut across at the chosen site/ })
  const sits = page.getByRole('region', { name: 'How it sits' })
  await page.locator('summary', { hasText: 'Levels by stage' }).click()
  const lines = page.getByRole('table', { name: 'Highest safe fill line for each stage' })
  const along = section(page).locator('.section-along')
  const before = {
    saws: await saws.allTextContents(),
    drawn: await drawing.innerHTML(),
    along: await along.innerHTML(),
    lines: await lines.textContent(),
    figures: await figuresShown(page),
    sits: await sits.textContent()
  }

  const cup = CATALOGUE.cups.find((each) => each.name === 'Slotted cup, 3 in')
  const changed = cup === undefined ? undefined : changeCup(kitchen.design, 'seat1', cup)
  if (changed?.ok !== true) throw new Error('the cup is not in the catalogue')
  await page.getByLabel('Cup', { exact: true }).selectOption({ label: 'Slotted cup, 3 in' })

  const plan = planOf(changed.value)
  const advice = plan.sawAdvice.find((each) => each.seatId === 'seat1')
  const seating =
    advice?.options.filter((each) => each.hold !== 'drops-through' && each.hold !== 'does-not-enter') ?? []
  await expect.poll(() => saws.getByRole('button').count()).toBe(seating.length)
  for (const [index, option] of seating.entries()) {
    const shown = await saws.getByRole('button').nth(index).textContent()
    expect(shown).toContain(HOLD_NAMES[option.hold])
    if (option.landMm !== null) expect(shown).toContain(`land ${say.fine(option.landMm)}`)
  }
  expect(await saws.allTextContents()).not.toEqual(before.saws)

  const hold = plan.channels[0]?.seats[0]?.hold
  expect(await drawing.getAttribute('aria-label')).toBe(
    `Cut across at the chosen site: the cup ${hold === undefined ? '' : HOLD_NAMES[hold]}`
  )
  expect(await drawing.innerHTML()).not.toBe(before.drawn)
  expect(await along.innerHTML()).not.toBe(before.along)

  // The seat's own figures, the safe fill line of each stage, and litres, gap and weight at the line follow the cup.
  const fit = plan.channels[0]?.seats[0]
  expect(await sits.textContent()).toContain(say.fine(fit?.undersideMm ?? 0))
  expect(await sits.textContent()).not.toBe(before.sits)
  await expect.poll(() => figuresShown(page)).toEqual(figuresOf(changed.value))
  expect(figuresOf(changed.value)).not.toEqual(before.figures)
  for (const stage of plan.channels[0]?.water.stages ?? []) {
    if (stage.reachable) await expect.poll(() => lines.textContent()).toContain(say.share(stage.safeFillShare))
  }
  expect(await lines.textContent()).not.toBe(before.lines)

  await page.getByRole('button', { name: /Show findings/ }).click()
  const list = page.locator('#findings-list')
  for (const finding of plan.findings.filter(({ severity }) => severity !== 'note')) {
    await expect.poll(() => list.textContent()).toContain(findingText(finding, workshop.shows))
  }
  expect(await list.textContent()).toContain('Slotted cup, 3 in does not go in.')
  expect(complaints).toEqual([])
})

test('litres, air gap and weight follow the fill line, typed and dragged', async () => {
  const { page, complaints } = await bench.open()
  await openDemo(page, kitchen.name)
  await chooseListed(page, 1)
  const fill = page.getByLabel('Fill to (%)', { exact: true })
  const filledTo = (percent: number): Design => {
    const edited = editChannels(kitchen.design, ['c1'], { fillShare: percent / 100 })
    if (!edited.ok) throw new Error('the fill was refused')
    return edited.value
  }
  const shown = () => figuresShown(page)

  await fill.fill('40')
  await fill.press('Enter')
  await expect.poll(shown).toEqual(figuresOf(filledTo(40)))

  const handle = section(page).getByRole('slider', { name: 'Fill line' })
  const box = await handle.boundingBox()
  if (box === null) throw new Error('the fill line has no handle')
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  await dragTo(page, at, { x: at.x, y: at.y - 14 })
  await release(page)
  const share = Number.parseFloat((await fill.inputValue()).replace(',', '.'))
  expect(share).toBeGreaterThan(45)
  await expect.poll(shown).toEqual(figuresOf(filledTo(share)))

  await handle.focus()
  await page.keyboard.press('ArrowDown')
  await expect.poll(() => handle.getAttribute('aria-valuenow')).toBe(`${Math.round(share - 1)}`)
  await page.keyboard.press('Control+z')
  await page.keyboard.press('Control+z')
  await expect.poll(() => fill.inputValue()).toBe('40')
  expect(complaints).toEqual([])
})

test('where the sill falls across the channel, its section shows the surface turned, with its level at both walls', async () => {
  const { page, complaints } = await bench.open()
  await openDemo(page, kitchen.name)
  await chooseListed(page, 1)
  const fallen: Design = { ...kitchen.design, sill: { ...kitchen.design.sill, fallAcrossMmPerM: 40 } }
  await openFile(page, { name: 'fallen.json', text: printDesign(fallen) })
  await chooseListed(page, 1)
  await page.getByRole('button', { name: /^Site 1\b/ }).click()
  const site = planOf(fallen).channels[0]?.water.sites[0]
  const [back = 0, front = 0] = [site?.backLevelMm, site?.frontLevelMm]
  expect(front).toBeGreaterThan(back)
  const walls = `the solution stands ${say.length(back)} at the back, ${say.length(front)} at the front`
  const drawing = section(page).getByRole('img', { name: new RegExp(walls) })
  await expect.poll(() => drawing.count()).toBe(1)
  expect(await section(page).locator('.section-note').first().textContent()).toContain(walls)
  const surface = drawing.locator('.pen-level')
  // Down the page is lower: the back, at the left, stands lower than the front.
  expect(Number(await surface.getAttribute('y1'))).toBeGreaterThan(Number(await surface.getAttribute('y2')))
  await expect.poll(() => drawing.textContent()).toContain(`front ${say.length(front)}`)
  expect(complaints).toEqual([])
})
