import type { Design } from '../design'
import { type Built, cropName } from './named'
import type { Printed } from './printed'
import type { SheetSection } from './sheet-data'

/** A label for each channel, to cut out: what it is, what is in it, and that it is not for drinking. */
export const labelPage = (design: Design, built: readonly Built[], show: Printed): SheetSection => ({
  part: 'labels',
  number: '10',
  heading: 'Labels',
  startsPage: false,
  blocks: [
    ...(design.quantity === 1
      ? []
      : [
          {
            kind: 'text',
            heading: '',
            strong: false,
            paragraphs: [`For one unit. Print these labels ${design.quantity} times.`]
          } as const
        ]),
    {
      kind: 'labels',
      labels: built.map(({ channel, plan }) => ({
        title: `Channel ${plan.mark}: ${design.title}`,
        lines: [
          [...new Set(channel.sites.map((site) => cropName(design, site.cropId)))]
            .filter((name) => name !== '')
            .join(', ') || 'Plants',
          `Plant feed solution, ${show.volume(plan.water.litres)}. Fill to ${show.length(plan.water.fromTopMm)} below the top.`,
          `Weighs ${show.mass(plan.load.filledG)} filled. Do not lift filled without care.`,
          'NOT FOR DRINKING. Keep out of the reach of children.'
        ]
      }))
    }
  ]
})
