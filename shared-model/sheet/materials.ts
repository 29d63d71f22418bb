import { type BillLine, shoppingList } from '../bill'
import type { Plan } from '../plan'
import { NEED_NAMES } from '../words'
import { cell, type Printed, TICK } from './printed'
import type { Block, Cell, SheetSection, TableBlock } from './sheet-data'

/** What the batch needs and what to buy; prices and the cost of one only when asked for. */
export const materialPages = (plan: Plan, show: Printed, cost: boolean): SheetSection => ({
  part: 'materials',
  number: '8',
  heading: 'Materials and shopping',
  startsPage: false,
  blocks: [
    materialTable(plan, show),
    ...(plan.bill.lines.some((line) => line.packs.length > 0) ? [shoppingTable(plan, show, cost)] : []),
    ...(cost ? costBlocks(plan, show) : [])
  ]
})

/** An amount of a bill line in the unit it is bought in. */
const amount = (line: BillLine, value: number, show: Printed): Cell => ({
  text: amountWords(line, value, show),
  exact: value
})

const amountWords = (line: BillLine, value: number, show: Printed): string => {
  switch (line.unit) {
    case 'piece':
      return show.decimal(value, 2)
    case 'mm':
      return show.length(value)
    case 'g':
      return show.mass(value)
    case 'mL':
      return show.volume(value / 1000)
  }
}

const materialTable = (plan: Plan, show: Printed): TableBlock => ({
  kind: 'table',
  name: 'materials',
  heading: plan.quantity === 1 ? 'For this unit' : `For all ${plan.quantity} units`,
  note: '',
  columns: [
    { head: '☐', align: 'left', widthMm: 9 },
    { head: 'Material', align: 'left', widthMm: 'rest' },
    { head: 'Each unit', align: 'right', widthMm: 22, exactUnit: 'in its unit' },
    { head: 'Needed', align: 'right', widthMm: 22, exactUnit: 'in its unit' },
    { head: 'From shelf', align: 'right', widthMm: 22, exactUnit: 'in its unit' },
    { head: 'Bought', align: 'right', widthMm: 22, exactUnit: 'in its unit' },
    { head: 'Left', align: 'right', widthMm: 22, exactUnit: 'in its unit' }
  ],
  rows: plan.bill.lines.map((line) => [
    TICK,
    { text: line.name, ...(NEED_NAMES[line.need] === line.name ? {} : { under: NEED_NAMES[line.need] }) },
    amount(line, line.perUnit, show),
    amount(line, line.needed, show),
    amount(line, line.fromShelf, show),
    amount(line, line.bought, show),
    amount(line, line.left, show)
  ])
})

const shoppingTable = (plan: Plan, show: Printed, cost: boolean): TableBlock => ({
  kind: 'table',
  name: 'shopping',
  heading: 'Shopping list by supplier',
  note: shoppingNote(plan, show, cost),
  columns: [
    { head: '☐', align: 'left', widthMm: 9 },
    { head: 'From', align: 'left', widthMm: 40 },
    { head: 'Pack', align: 'left', widthMm: 'rest' },
    { head: 'Packs', align: 'right', widthMm: 18 },
    ...(cost
      ? [
          { head: 'Each', align: 'right', widthMm: 28, exactUnit: plan.bill.currency } as const,
          { head: 'Together', align: 'right', widthMm: 30, exactUnit: plan.bill.currency } as const
        ]
      : [])
  ],
  rows: shoppingList(plan.bill).flatMap(({ supplier, rows }) =>
    rows.map((row) => [
      TICK,
      cell(supplier),
      // Bars are told apart by their length.
      cell(row.need === 'stock' ? `${row.name}, ${show.length(row.packSize)}` : row.name),
      { text: `${row.packs}`, strong: true },
      ...(cost ? [moneyCell(row.eachMinor, plan, show), moneyCell(row.totalMinor, plan, show)] : [])
    ])
  )
})

/** What all of it comes to, and what could not be put on the list. */
const shoppingNote = ({ bill }: Plan, show: Printed, cost: boolean): string => {
  const totalMinor = shoppingList(bill).reduce((sum, list) => sum + list.totalMinor, 0)
  const together = cost ? [`All together ${show.money(totalMinor)}.`] : []
  const missing = bill.missing.map((one) => one.name).join(', ')
  return [...together, ...(missing === '' ? [] : [`No pack on offer for: ${missing}.`])].join(' ')
}

/** An amount as it is said, and behind it in units of the currency. */
const moneyCell = (minor: number, { pricing }: Plan, show: Printed): Cell => ({
  text: show.money(minor),
  exact: minor / 10 ** pricing.digits
})

const costBlocks = (plan: Plan, show: Printed): Block[] => {
  const { cost, ways } = plan.pricing
  if (cost === null) {
    const why = plan.bill.missing.length > 0 ? 'a price is missing' : 'these prices cannot be added up'
    return [{ kind: 'text', heading: 'Cost', strong: false, paragraphs: [`The cost is not known: ${why}.`] }]
  }
  return [
    {
      kind: 'facts',
      heading: 'Cost of one unit',
      columns: 4,
      facts: [
        { name: 'Materials', value: show.money(cost.materialMinor) },
        { name: 'Labour', value: show.money(cost.labourMinor) },
        { name: 'Tool wear', value: show.money(cost.toolWearMinor) },
        { name: 'Overheads', value: show.money(cost.overheadMinor) },
        { name: 'Scrap allowance', value: show.money(cost.scrapMinor) },
        { name: 'Rest of packs', value: show.money(cost.packRestMinor) },
        { name: 'One unit', value: show.money(cost.totalMinor) },
        { name: `Batch of ${plan.quantity}`, value: show.money(cost.batchMinor) }
      ]
    },
    ...(ways.length === 0 ? [] : [wayTable(plan, show)])
  ]
}

const wayTable = (plan: Plan, show: Printed): TableBlock => ({
  kind: 'table',
  name: 'prices',
  heading: 'Prices by way of selling',
  note: '',
  columns: [
    { head: 'Way', align: 'left', widthMm: 'rest' },
    { head: 'Price before tax', align: 'right', widthMm: 32 },
    { head: 'Buyer pays', align: 'right', widthMm: 30 },
    { head: 'Fees', align: 'right', widthMm: 26 },
    { head: 'Profit', align: 'right', widthMm: 28 },
    { head: 'Margin', align: 'right', widthMm: 18 }
  ],
  rows: plan.pricing.ways.map((way) => [
    cell(way.name),
    cell(show.money(way.priceMinor)),
    cell(show.money(way.shownMinor)),
    cell(show.money(way.feesMinor)),
    cell(show.money(way.profitMinor)),
    cell(show.percent(way.marginShare))
  ])
})
