import { memo } from 'react'
import type { Channel } from '../../shared-model/layout'
import type { ChannelPlan } from '../../shared-model/plan'
import { HOLD_NAMES } from '../../shared-model/words'
import { Dimension } from '../drawing/Dimension'
import { useSize } from '../drawing/use-size'
import { useSay } from '../store/use-say'
import { gapMark } from './gap-words'
import { RootZone } from './RootZone'
import { SolidShape } from './SolidShape'
import { type SectionScale, topOf } from './section-scale'

const LEAST_HEIGHT = 80
/** Room for the dimension on each side, and for the words below, at the usual text size. */
const SIDE_PX = 100
const WORDS_PX = 40
const EDGE = 14
/** A zone lower than this is not lettered. */
const LEAST_LETTERED_PX = 14

/** The channel cut across at one site, larger, with the air gap and the cup's height dimensioned. */
export const AcrossDrawing = memo(Across)

function Across({
  channel,
  part,
  siteId
}: {
  readonly channel: Channel
  readonly part: ChannelPlan
  readonly siteId: string
}) {
  const { ref, size } = useSize<HTMLDivElement>()
  const say = useSay()
  const { section } = part.layout
  const seat = part.seats.find((each) => each.siteId === siteId)
  const water = part.water.sites.find((each) => each.siteId === siteId)
  const topMm = topOf(part)
  const wall = section.averageWallMm
  const inside = part.water.insideHeightMm
  const shown = Math.max(240, size.width)
  const high = Math.max(LEAST_HEIGHT, size.height - WORDS_PX * size.letters)
  const across = Math.max(40, shown - 2 * SIDE_PX * size.letters)
  const pxPerMm = Math.min((high - 2 * EDGE) / (topMm + wall), across / section.widthMm)
  const middle = shown / 2
  const height = 2 * EDGE + (topMm + wall) * pxPerMm
  const scale: SectionScale = {
    pxPerMm,
    x: (acrossMm) => middle + acrossMm * pxPerMm,
    y: (heightMm) => EDGE + (topMm - heightMm) * pxPerMm,
    height
  }
  const half = section.widthMm / 2
  const levelMm = water?.levelMm ?? part.water.levelMm
  const backMm = water?.backLevelMm ?? levelMm
  const frontMm = water?.frontLevelMm ?? levelMm
  const isTurned = backMm !== frontMm
  const walls = isTurned
    ? `the solution stands ${say.length(backMm)} at the back, ${say.length(frontMm)} at the front`
    : ''
  const hole = (seat?.holeMm ?? 0) / 2
  const right = scale.x(half) + 14
  return (
    <div ref={ref} className="section-across">
      <svg
        className="drawing"
        width={shown}
        height={height}
        viewBox={`0 0 ${shown} ${height}`}
        role="img"
        aria-label={`Cut across at the chosen site${seat === undefined ? '' : `: the cup ${HOLD_NAMES[seat.hold]}`}${isTurned ? `; ${walls}` : ''}`}
      >
        {section.shape === 'round' ? (
          <RoundWalls scale={scale} radiusMm={half} wall={wall} backMm={backMm} frontMm={frontMm} insideMm={inside} />
        ) : (
          <>
            <polygon
              className="pen-water"
              points={`${scale.x(-half + wall)},${scale.y(0)} ${scale.x(-half + wall)},${scale.y(Math.min(inside, backMm))} ${scale.x(half - wall)},${scale.y(Math.min(inside, frontMm))} ${scale.x(half - wall)},${scale.y(0)}`}
            />
            <path
              className="pen-wall"
              d={`M${scale.x(-hole)} ${scale.y(inside + wall)}H${scale.x(-half)}V${scale.y(-wall)}H${scale.x(half)}V${scale.y(inside + wall)}H${scale.x(hole)}V${scale.y(inside)}H${scale.x(half - wall)}V${scale.y(0)}H${scale.x(-half + wall)}V${scale.y(inside)}H${scale.x(-hole)}Z`}
            />
          </>
        )}
        {seat === undefined ? null : <RootZone seat={seat} atMm={0} scale={scale} />}
        {seat?.solids.map((solid, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a stack stand in their order
          <SolidShape key={index} solid={solid} atMm={0} scale={scale} />
        ))}
        <line
          className="pen-level"
          x1={scale.x(-half + wall)}
          x2={scale.x(half - wall)}
          y1={scale.y(Math.min(inside, backMm))}
          y2={scale.y(Math.min(inside, frontMm))}
        />
        <line className="pen-centre" x1={middle} x2={middle} y1={2} y2={height - 2} />
        <Dimension
          x1={right}
          x2={right}
          y1={scale.y(0)}
          y2={scale.y(frontMm)}
          text={`${isTurned ? 'front' : 'fill'} ${say.length(frontMm)}`}
        />
        {isTurned && (water?.gapMm ?? 0) > 0 ? (
          <Dimension
            x1={scale.x(-half) - 14}
            x2={scale.x(-half) - 14}
            y1={scale.y(0)}
            y2={scale.y(backMm)}
            text={`back ${say.length(backMm)}`}
            side={-1}
          />
        ) : null}
        {seat === undefined || seat.undersideMm * pxPerMm < LEAST_LETTERED_PX ? null : (
          <text className="soft" x={middle} y={scale.y(seat.undersideMm / 2) + 4} textAnchor="middle">
            roots
          </text>
        )}
        {seat === undefined || water === undefined ? null : (
          <Dimension
            x1={scale.x(-half) - 14}
            x2={scale.x(-half) - 14}
            y1={scale.y(seat.undersideMm)}
            y2={scale.y(levelMm)}
            text={gapMark(water.gapMm, say)}
            side={-1}
          />
        )}
      </svg>
      <p className="small quiet section-note">
        {seat === undefined ? '' : `Across site at ${say.length(siteAt(channel, siteId))}: ${HOLD_NAMES[seat.hold]}`}
        {isTurned ? `; ${walls}` : ''}
      </p>
    </div>
  )
}

const siteAt = (channel: Channel, siteId: string): number => channel.sites.find((site) => site.id === siteId)?.atMm ?? 0

interface RoundProps {
  readonly scale: SectionScale
  readonly radiusMm: number
  readonly wall: number
  readonly backMm: number
  readonly frontMm: number
  readonly insideMm: number
}

/** A tube's wall as a ring, and the solution as the segment below the level, turned about the bore's middle. */
function RoundWalls({ scale, radiusMm, wall, backMm, frontMm, insideMm }: RoundProps) {
  const bore = insideMm / 2
  const level = Math.min(insideMm, Math.max(0, (backMm + frontMm) / 2))
  const chord = Math.sqrt(Math.max(0, bore * bore - (level - bore) ** 2))
  const r = bore * scale.pxPerMm
  const turn = chord > 0 ? (Math.atan2(backMm - frontMm, 2 * chord) * 180) / Math.PI : 0
  return (
    <>
      <circle className="pen-wall" cx={scale.x(0)} cy={scale.y(bore)} r={radiusMm * scale.pxPerMm} />
      <circle className="pen-hole" cx={scale.x(0)} cy={scale.y(bore)} r={(radiusMm - wall) * scale.pxPerMm} />
      <path
        className="pen-water"
        transform={`rotate(${turn} ${scale.x(0)} ${scale.y(bore)})`}
        d={`M${scale.x(-chord)} ${scale.y(level)}A${r} ${r} 0 ${level > bore ? 1 : 0} 0 ${scale.x(chord)} ${scale.y(level)}Z`}
      />
    </>
  )
}
