import type { Design, Workshop } from '../../../shared-model/design'
import { ok, type Result } from '../../../shared-model/outcome'
import type { Plan } from '../../../shared-model/plan'
import { type PricingProblem, type Quote, quote, USUAL_DAY_H } from '../../../shared-model/pricing'
import type { Block, Cell, Column } from '../../../shared-model/sheet'
import type { Say } from '../../../shared-model/words'

/** What a buyer is offered for the batch in one way of selling; null: it has no price yet. */
export function quoteOf(
  plan: Plan,
  design: Design,
  workshop: Workshop,
  wayId: string
): Result<Quote | null, PricingProblem> {
  const way = workshop.pricing.ways.find(({ id }) => id === wayId)
  const price = plan.pricing.ways.find((each) => each.wayId === wayId)
  if (way === undefined || price === undefined) return ok(null)
  const { taxKind, taxPercent } = workshop.pricing
  return quote({
    currency: workshop.currency,
    items: [{ what: design.title, count: plan.quantity, eachMinor: price.shownMinor }],
    postageMinor: way.postageChargedMinor * plan.quantity,
    taxKind,
    taxPercent,
    workedS: plan.bench.workedS,
    waitS: Math.max(0, plan.bench.elapsedS - plan.bench.workedS),
    workHoursADay: workshop.pricing.workHoursADay ?? USUAL_DAY_H
  })
}

/** The quote as a page for the buyer: what, how many, price, tax, time; nothing of what it costs to make. */
export function quoteBlocks(made: Quote, design: Design, on: string, say: Say): readonly Block[] {
  const taxed = made.taxKind !== 'none'
  return [
    {
      kind: 'facts',
      heading: '',
      columns: 4,
      facts: [
        { name: 'Maker', value: design.maker === '' ? '________________' : design.maker },
        { name: 'For', value: '________________' },
        { name: 'Day of the quote', value: on },
        { name: 'Ready', value: `${made.leadDays === 1 ? 'one day' : `${made.leadDays} days`} after the order` }
      ]
    },
    {
      kind: 'table',
      name: '',
      heading: 'What is offered',
      note: taxed ? taxNote(made, say) : '',
      columns: COLUMNS,
      rows: [
        ...made.rows.map((row) => [
          cell(row.what),
          cell(`${row.count}`),
          cell(say.money(row.eachMinor)),
          cell(say.money(row.eachMinor * row.count))
        ]),
        ...(taxed && made.taxKind === 'sales-tax-on-top'
          ? [[cell(`Sales tax, ${say.percent(made.taxPercent)}`), cell(''), cell(''), cell(say.money(made.taxMinor))]]
          : []),
        [cell('To pay', true), cell(''), cell(''), cell(say.money(made.totalMinor), true)]
      ]
    }
  ]
}

const COLUMNS: readonly Column[] = [
  { head: 'What', align: 'left', widthMm: 'rest' },
  { head: 'How many', align: 'right', widthMm: 22 },
  { head: 'Each', align: 'right', widthMm: 34 },
  { head: 'Together', align: 'right', widthMm: 34 }
]

const cell = (text: string, strong = false): Cell => (strong ? { text, strong } : { text })

const taxNote = (made: Quote, say: Say): string =>
  made.taxKind === 'value-added-inside'
    ? `The prices hold ${say.percent(made.taxPercent)} value-added tax, ${say.money(made.taxMinor)} of the whole.`
    : 'Sales tax is added on top of the prices.'
