import type { Design } from '../design'
import type { Plan } from '../plan'
import { channelTemplates } from './channel-template'
import type { Built } from './named'
import type { Printed } from './printed'
import type { ChannelTemplate, SheetSection } from './sheet-data'

/** Words before the 1:1 pages; the pages themselves are made from the templates, tile by tile. */
export const templatePages = (wraps: boolean): SheetSection => ({
  part: 'templates',
  number: '5',
  heading: 'Templates at full size',
  startsPage: true,
  blocks: [
    {
      kind: 'text',
      heading: 'Before you use them',
      strong: false,
      paragraphs: [
        'Print at 100 %: no fitting to the page, no scaling. Lay a rule on the check bars of every page: 6 in and 150 mm, along and across. Where a bar is off, do not use the page.',
        'Trim one page at its match line, lay it on the next so that the registration crosses meet, and tape. Each match line has its distance from the datum end, so a page can also be laid by rule alone.',
        'Lay the datum line on the datum end of the piece and the centre line on its centre line; on a front or back face lay the upper edge level with the top of the channel. Prick every centre through the paper.',
        ...(wraps
          ? [
              'On round pipe wrap the paper tight about it with the centre line along the crown. The curved outlines show the edge that the saw leaves on the outside; the hole itself is round seen from above.'
            ]
          : [])
      ]
    }
  ]
})

export const templatesOf = (
  built: readonly Built[],
  plan: Plan,
  design: Design,
  show: Printed
): readonly ChannelTemplate[] => built.flatMap((one) => channelTemplates(one, plan, design, show))
