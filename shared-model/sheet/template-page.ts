import type { Design } from '../design'
import type { Plan } from '../plan'
import { channelTemplates } from './channel-template'
import type { Built } from './named'
import type { Printed } from './printed'
import type { ChannelTemplate, SheetSection } from './sheet-data'

/** Words before the 1:1 pages; the pages themselves are made from the templates, tile by tile. */
export const templatePages = (templates: readonly ChannelTemplate[]): SheetSection => ({
  part: 'templates',
  number: '5',
  heading: 'Templates at full size',
  startsPage: false,
  blocks: [
    {
      kind: 'text',
      heading: 'Before you use them',
      strong: false,
      paragraphs: [
        'Print at 100 %: no fitting to the page, no scaling. Lay a rule on the check bars of every page: 6 in and 150 mm, along and down. Where a bar is off, do not use the page.',
        'Trim one page at its match line, lay it on the next so that the registration crosses meet, and tape. Each match line has its distance from the datum end (one that runs along: from the centre line or the upper edge), so a page can also be laid by rule alone. Of sides and undersides only the pages with a hole are printed: lay those by the distances along their lower edge.',
        'Lay the datum line on the datum end of the piece and the centre line on its centre line; on a front or back face lay the upper edge level with the top of the channel. Prick every centre through the paper.',
        ...(templates.some(({ wraps }) => wraps)
          ? [
              'On round pipe first wrap the band square about the pipe at one end, its long edges meeting themselves, and mark the crown, both sides and the underside; do the same at the other end and join the marks along a straight edge. Then wrap each template tight with its centre line on the crown (on a side: on the mark of that side). The curved outlines show the edge that the saw leaves on the outside; the hole itself is round seen along the drill.'
            ]
          : []),
        ...(templates.some(({ face }) => face === 'datum-end' || face === 'far-end')
          ? [
              "A hole in an end goes through the closure. The template's outline is the channel's outside: lay it on the closure where the channel will meet it, underside to underside. A dashed line is the closure's own outside."
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
