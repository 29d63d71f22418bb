import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { shoppingList } from '../../shared-model/bill'
import { DEMOS } from '../../shared-model/design'
import { evaluate } from '../../shared-model/plan'
import { buildSheet, type SheetPart } from '../../shared-model/sheet'
import { sayIn } from '../../shared-model/words'
import { figuresIn, openDemo, openRoom, planSettled, sheetDrawn, totals } from './acts'
import { benchForTests } from './page'
import { today } from './today'

const bench = benchForTests()

/** Cells of every table of the build sheet that stands on the screen, row by row. */
const tablesOn = (page: Page): Promise<readonly (readonly string[])[]> =>
  page
    .locator('main section.table-holder tbody tr')
    .evaluateAll((rows) => rows.map((row) => [...row.querySelectorAll('td')].map((cell) => cell.textContent ?? '')))

for (const { id, name, design, workshop } of DEMOS) {
  const plan = evaluate(design, workshop, today())
  const say = sayIn(workshop.shows, workshop.currency)
  const cost = plan.pricing.cost?.totalMinor ?? 0
  const rowsOf = (parts: readonly SheetPart[], without: readonly string[] = []): readonly (readonly string[])[] =>
    buildSheet(plan, design, workshop, { parts })
      .sections.flatMap((section) => section.blocks)
      .flatMap((block) => (block.kind === 'table' && !without.includes(block.name) ? block.rows : []))
      .map((row) => row.map((cell) => `${cell.text}${cell.under ?? ''}`))

  test(`the plan of ${id} stands on every screen, figure by figure as worked out from the same documents`, async () => {
    const { page, complaints } = await bench.open()
    await openDemo(page, name)
    await planSettled(page)

    expect(await totals(page)).toEqual({
      Plants: `${plan.totals.plants}`,
      Solution: say.volume(plan.totals.litres),
      Filled: say.mass(plan.load.filledG),
      Bars: `${plan.cuts.reduce((sum, cut) => sum + cut.bars.length, 0)}`,
      'Cost of one': say.money(cost)
    })
    const strip = page.getByRole('region', { name: 'Findings', exact: true })
    const { stops, warns, notes } = plan.totals
    expect(await strip.getByRole('button').first().textContent()).toMatch(
      new RegExp(`${stops} stop\\s*${warns} to mind\\s*${notes} note`)
    )

    await openRoom(page, 'Cuts')
    for (const cut of plan.cuts) {
      const profile = design.parts.profiles.find((each) => each.id === cut.profileId)
      const figures = await figuresIn(
        page
          .getByRole('region', { name: `Bars of ${profile?.name}` })
          .locator('dl')
          .first()
      )
      expect(figures).toMatchObject({
        Bars: `${cut.bars.length}`,
        'Stock cost': say.money(cut.costMinor ?? 0),
        Bought: say.length(cut.boughtMm),
        'Kept as offcuts': say.length(cut.keptMm),
        Waste: say.length(cut.wasteMm)
      })
    }
    // Bars and what is left of them stand in the strips above.
    expect(await tablesOn(page)).toEqual(rowsOf(['cuts', 'collars'], ['bars']))

    await openRoom(page, 'Drilling & steps')
    expect(await figuresIn(page.locator('main dl.figures.part'))).toMatchObject({
      Holes: `${plan.bench.holes.length}`,
      'Tool changes': `${plan.bench.toolChanges}`,
      'Worked time of the batch': say.time(plan.bench.workedS),
      'With waits': say.time(plan.bench.elapsedS)
    })
    expect(await tablesOn(page)).toEqual(rowsOf(['drilling', 'steps', 'cautions']))

    await openRoom(page, 'Materials')
    const list = page.getByRole('table', { name: 'Shopping list by supplier' })
    await list.getByRole('row', { name: `Together ${say.money(plan.bill.totalMinor ?? 0)}` }).waitFor()
    for (const { supplier, totalMinor } of shoppingList(plan.bill))
      await list.getByRole('row', { name: `${supplier} ${say.money(totalMinor)}` }).waitFor()
    expect(await tablesOn(page)).toEqual(rowsOf(['materials', 'first-fill'], ['shopping', 'prices']))

    await openRoom(page, 'Price')
    const breakdown = page.getByRole('region', { name: 'Cost of one' })
    expect(await breakdown.locator('strong').textContent()).toBe(say.money(cost))
    for (const way of plan.pricing.ways) {
      const table = page.getByRole('table', { name: 'Ways of selling side by side' })
      await table.getByRole('columnheader', { name: way.name }).waitFor()
      expect(await table.getByRole('row', { name: 'Profit of the batch' }).textContent()).toContain(
        say.money(way.batchProfitMinor)
      )
    }

    await openRoom(page, 'Workshop')
    for (const { saw } of workshop.saws.slice(0, 3)) {
      expect(await page.getByRole('main').textContent()).toContain(saw.name)
    }

    await openRoom(page, 'Build sheet')
    await sheetDrawn(page)
    const count = await page.getByRole('list', { name: 'Pages of the build sheet' }).getByRole('img').count()
    expect(await page.getByText(`${count} pages`, { exact: true }).count()).toBe(1)
    expect(complaints).toEqual([])
  })
}
