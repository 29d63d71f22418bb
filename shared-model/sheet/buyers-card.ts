import type { Design } from '../design'
import type { Plan } from '../plan'
import { cautionText, MATERIAL_NAMES } from '../words'
import { cardFillLines } from './card-fill-lines'
import { inOrder } from './caution-pages'
import { type Built, stackParts } from './named'
import type { Printed } from './printed'
import type { SheetSection, TableBlock, TextBlock } from './sheet-data'

const NO_CLAIM = 'No conformity to product rules is claimed: ask where you sell or use it.'
const LINE = '________________'

/** The page that goes with the goods: no prices, no claim that the design does not bear out. */
export const buyersCard = (
  plan: Plan,
  design: Design,
  built: readonly Built[],
  show: Printed,
  batchNumber: string
): SheetSection => ({
  part: 'buyers-card',
  number: '',
  heading: `Card for the buyer: ${design.title}`,
  startsPage: true,
  blocks: [
    {
      kind: 'facts',
      heading: '',
      columns: 4,
      facts: [
        { name: 'Maker', value: design.maker === '' ? LINE : design.maker },
        { name: 'Serial number', value: `____ of ${plan.quantity}` },
        { name: 'Batch', value: batchNumber === '' ? LINE : batchNumber },
        { name: 'Filled weight', value: show.mass(plan.load.filledG) },
        { name: 'Leak tested on', value: LINE },
        { name: 'Initials', value: LINE },
        { name: 'Solution', value: show.volume(plan.firstFill.litres) },
        { name: 'EC', value: ecWords(plan, show) }
      ]
    },
    text('What it is made of', [`${madeOf(design, built)} ${foodContact(design, built)} ${NO_CLAIM}`]),
    text('Where it may stand', [placeWords(design, plan, show)]),
    text('How to fill', [
      `Fill each channel to its line, down from the top, and later no higher than the line of its plants' stage; a minus before an air gap: the cup dips in. Look at the level every ${refillWords(built)}.`
    ]),
    cardFillLines(built, show),
    text('Change of risers and cleaning', [
      'When roots hang well below the cup, lift the plant with its riser or put a higher one below it, to keep the air gap of its stage. Do not raise the level over roots that have grown in air. Between crops: empty, scrub, rinse until nothing foams, dry with the holes open.'
    ]),
    {
      ...text('Take care', [
        'Plant feed solution is not for drinking: keep it and the feed from children and animals. Fill it where it stands. No load that a sill can bear is promised: compare the filled weight.'
      ]),
      parts: true
    },
    ...userCautions(plan, show)
  ]
})

/** Cautions that concern who uses it, not who builds it. */
const USER_CATEGORIES = /^(handling|place|electric|nutrient|food|biology)$/

/** All of them that hold, two abreast, the gravest first; of one signal word the longest first, so that pairs are alike. */
const userCautions = (plan: Plan, show: Printed): readonly TableBlock[] => {
  const said = inOrder(plan.cautions)
    .filter(({ category }) => USER_CATEGORIES.test(category))
    .map((caution) => ({ lead: caution.signalWord, text: cautionText(caution, show.say) }))
  const once = said.filter((one, index) => said.findIndex(({ text: words }) => words === one.text) === index)
  const words = [...new Set(once.map(({ lead }) => lead))]
  const rows = words.flatMap((word) =>
    once.filter(({ lead }) => lead === word).sort((a, b) => b.text.length - a.text.length)
  )
  if (rows.length === 0) return []
  return [
    {
      kind: 'table',
      name: '',
      heading: '',
      note: '',
      close: true,
      abreast: 2,
      columns: [{ head: '', align: 'left', widthMm: 88.5 }],
      rows: rows.map((one) => [one])
    }
  ]
}

const text = (heading: string, paragraphs: readonly string[]): TextBlock => ({
  kind: 'text',
  heading,
  strong: false,
  runIn: true,
  paragraphs: paragraphs.filter((words) => words !== '')
})

const ecWords = (plan: Plan, show: Printed): string => {
  const { ec } = plan.firstFill
  return ec === null ? 'ask for your crop' : `${show.decimal(ec.least, 2)} to ${show.decimal(ec.most, 2)} mS/cm`
}

/** Profiles and the parts that seats in use hold, each with what it is made of. */
const madeOf = (design: Design, built: readonly Built[]): string => {
  const seated = new Set(built.flatMap(({ channel }) => channel.sites.map(({ seatId }) => seatId)))
  const stacks = design.seats.filter(({ id }) => seated.has(id)).flatMap((seat) => stackParts(design, seat))
  const ends = built.flatMap(({ channel }) => [channel.datumClosureId, channel.farClosureId])
  const made = [
    ...built.map(({ profile }) => profile),
    ...design.parts.closures.filter(({ id }) => ends.includes(id)),
    ...stacks.flatMap(({ kind, part }) =>
      kind === 'plant-collar'
        ? []
        : [{ name: part.name, material: kind === 'riser' ? part.cup.material : part.material }]
    )
  ].map(({ name, material }) => {
    const of = MATERIAL_NAMES[material]
    return name.toLowerCase().includes(of.toLowerCase()) ? name : `${name} (${of})`
  })
  const plantCollars = stacks.flatMap(({ kind, part }) => (kind === 'plant-collar' ? [part.name] : []))
  return `${[...new Set([...made, ...plantCollars])].join('; ')}.`
}

const foodContact = (design: Design, built: readonly Built[]): string => {
  if (design.place.liner === 'food-contact') return 'Solution stands in a liner that its maker marks for food contact.'
  const marks = built.map(({ profile }) => profile.foodContactMark)
  if (marks.length > 0 && marks.every((mark) => mark === true))
    return "The profile carries its maker's mark for food contact."
  if (marks.some((mark) => mark === false)) return 'The profile is not marked for food contact.'
  return 'Whether the profile is fit for food contact is not known.'
}

const placeWords = (design: Design, plan: Plan, show: Printed): string => {
  const where = {
    inside: 'Inside, on a level sill',
    outside: 'Outside, secured against falling',
    unknown: 'On a level sill'
  }
  const size = `${show.length(plan.sill.lengthMm)} × ${show.length(plan.sill.depthMm)}`
  return `${where[design.place.where]} of at least ${size}, away from sockets, not in a window that is a way out.`
}

const refillWords = (built: readonly Built[]): string => {
  const days = built.flatMap(({ plan }) => plan.water.drawDown?.refillDay ?? [])
  const least = Math.min(7, ...days)
  return least >= 7 ? 'week' : least <= 1 ? 'day' : `${least} days`
}
