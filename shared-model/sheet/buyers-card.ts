import type { Design } from '../design'
import type { ChannelPlan, Plan } from '../plan'
import { cautionText, MATERIAL_NAMES, STAGE_NAMES } from '../words'
import { inOrder } from './caution-pages'
import { belowTop } from './first-fill'
import type { Built } from './named'
import { cell, type Printed } from './printed'
import type { Block, SheetSection } from './sheet-data'

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
    text('What it is made of', [madeOf(design, built), foodContact(design, built)]),
    text('Where it may stand', [placeWords(design, plan, show)]),
    text('How to fill', fillWords(built, show)),
    stageRows(built, show),
    text('Change of risers and cleaning', [
      'When roots hang well below the cup, lift the plant with its riser or put a higher one below it, so that the air gap of its stage is kept. Do not raise the level over roots that have grown in air.',
      'Between crops: empty, scrub, rinse until nothing foams, and let it dry with the holes open.'
    ]),
    text(
      'Take care',
      [
        'Plant feed solution is not for drinking. Keep it and the feed out of the reach of children and animals.',
        'Fill it where it stands. No load that a sill can bear is promised: compare the filled weight.',
        ...inOrder(plan.cautions)
          .filter((caution) => USER_CATEGORIES.test(caution.category))
          .slice(0, 8)
          .map((caution) => `${caution.signalWord}: ${cautionText(caution, show.say)}`)
      ].filter((words, index, all) => all.indexOf(words) === index)
    ),
    text('', [
      'No conformity to product rules is claimed on this card: ask for the rules on marking where you sell or use it.'
    ])
  ]
})

/** Cautions that concern who uses it, not who builds it. */
const USER_CATEGORIES = /^(handling|place|electric|nutrient|food|biology)$/

const text = (heading: string, paragraphs: readonly string[]): Block => ({
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

const madeOf = (design: Design, built: readonly Built[]): string => {
  const made = [...built.map(({ profile }) => profile), ...design.parts.cups].map(({ name, material }) => {
    const of = MATERIAL_NAMES[material]
    return name.toLowerCase().includes(of.toLowerCase()) ? name : `${name} (${of})`
  })
  return `${[...new Set(made)].join('; ')}.`
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
  return `${where[design.place.where]} of at least ${size}, whole on the sill, away from sockets and not in a window that is a way out.`
}

const fillWords = (built: readonly Built[], show: Printed): readonly string[] => [
  `${built
    .map(
      ({ plan }) =>
        `Channel ${plan.mark}: ${show.volume(plan.water.litres)}, to the line ${show.length(plan.water.fromTopMm)} below the top`
    )
    .join('; ')}.`
]

/** A line a stage: the gap wanted, and for each channel the highest line that keeps it, down from the top. */
const stageRows = (built: readonly Built[], show: Printed): Block => {
  const stages = built[0]?.plan.water.stages ?? []
  return {
    kind: 'table',
    name: '',
    heading: 'Stages and refills',
    note: `Look at the level every ${refillWords(built)}. A minus before a gap: the cup stands that deep in the solution.`,
    columns: [
      { head: 'Stage', align: 'left', widthMm: 34 },
      { head: 'Air gap to keep', align: 'right', widthMm: 34 },
      { head: 'Fill no higher than this far below the top', align: 'left', widthMm: 'rest' }
    ],
    rows: stages.map((stage, index) => [
      cell(STAGE_NAMES[stage.stage], true),
      cell(show.length(stage.wantedGapMm)),
      cell(built.map(({ plan }) => lineWords(plan, index, show)).join(';  '))
    ])
  }
}

const lineWords = ({ mark, water }: ChannelPlan, index: number, show: Printed): string => {
  const stage = water.stages[index]
  if (stage === undefined) return ''
  return `channel ${mark}: ${stage.reachable ? show.length(belowTop(water, stage.safeLevelMm)) : 'change the riser first'}`
}

const refillWords = (built: readonly Built[]): string => {
  const days = built.flatMap(({ plan }) => plan.water.drawDown?.refillDay ?? [])
  const least = Math.min(7, ...days)
  return least >= 7 ? 'week' : least <= 1 ? 'day' : `${least} days`
}
