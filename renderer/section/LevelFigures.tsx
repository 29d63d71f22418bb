import type { Channel } from '../../shared-model/layout'
import type { ChannelPlan } from '../../shared-model/plan'
import { Dimension } from '../drawing/Dimension'
import { useSay } from '../store/use-say'
import { gapMark } from './gap-words'
import type { SectionScale } from './section-scale'

/** Lines of lettering nearer than this run into each other, px at the usual text size. */
const LETTERS_PX = 13
/** Width of a letter, rather too wide than too narrow. */
const LETTER_PX = 7

export interface LevelFiguresProps {
  readonly channel: Channel
  readonly part: ChannelPlan
  readonly scale: SectionScale
  /** Size of the letters against the usual. */
  readonly letters: number
  /** Level at the far end, and where its lettering begins. */
  readonly levelMm: number
  readonly x: number
}

/** The fill line and the end level in figures at the far end, and the least air gap dimensioned where it is. */
export function LevelFigures({ channel, part, scale, letters, levelMm, x }: LevelFiguresProps) {
  const say = useSay()
  const { water, seats } = part
  const least = water.sites.find((site) => site.gapMm === water.leastGapMm)
  const seat = seats.find((each) => each.siteId === least?.siteId)
  const atMm = channel.sites.find((site) => site.id === least?.siteId)?.atMm
  const mark = least === undefined ? '' : gapMark(least.gapMm, say)
  const markX = atMm === undefined || seat === undefined ? 0 : scale.x(atMm + seat.widestMm / 2) + 6
  // Where the next cup stands too near for it, the section across the channel alone says it.
  const endsX = Math.min(
    scale.x(channel.lengthMm),
    ...seats
      .map((each) => scale.x((channel.sites.find(({ id }) => id === each.siteId)?.atMm ?? 0) - each.widestMm / 2))
      .filter((edge) => edge > markX - 6)
  )
  const roomy = markX + 6 + mark.length * LETTER_PX * letters < endsX
  const levelY = scale.y(levelMm) + 4
  const endY = Math.max(scale.y(water.endLevelMm) + 4, levelY + LETTERS_PX)
  return (
    <g>
      <text x={x} y={levelY}>
        fill {say.length(water.levelMm)}
      </text>
      <text className="soft" x={x} y={endY}>
        end {say.length(water.endLevelMm)}
      </text>
      {least === undefined || seat === undefined || !roomy ? null : (
        <Dimension x1={markX} x2={markX} y1={scale.y(seat.undersideMm)} y2={scale.y(least.levelMm)} text={mark} />
      )}
    </g>
  )
}
