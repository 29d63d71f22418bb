import { memo } from 'react'
import type { Channel } from '../../shared-model/layout'
import type { ChannelPlan } from '../../shared-model/plan'
import { Dimension } from '../drawing/Dimension'
import { useSize } from '../drawing/use-size'
import { useSay } from '../store/use-say'
import { LevelFigures } from './LevelFigures'
import { LevelHandle } from './LevelHandle'
import { RootZone } from './RootZone'
import { SolidShape } from './SolidShape'
import { alongScale } from './section-scale'

/** Before the room is known, and where it is too low to draw in. */
const LEAST_HEIGHT = 120

/** The channel cut along its middle, from the datum end. */
export const AlongDrawing = memo(Along)

function Along({ channel, part }: { readonly channel: Channel; readonly part: ChannelPlan }) {
  const { ref, size } = useSize<HTMLElement>()
  const say = useSay()
  const { layout, water, seats } = part
  const width = Math.max(200, size.width)
  const scale = alongScale(part, width, Math.max(LEAST_HEIGHT, size.height), size.letters)
  const wall = layout.section.averageWallMm
  const inside = water.insideHeightMm
  const from = layout.wetFromMm
  const to = from + layout.wetLengthMm
  const ends = (layout.overallLengthMm - layout.cutLengthMm) / 2
  const box = (x1: number, y1: number, x2: number, y2: number) => ({
    x: scale.x(x1),
    y: scale.y(y2),
    width: Math.max(0, scale.x(x2) - scale.x(x1)),
    height: Math.max(0, scale.y(y1) - scale.y(y2))
  })
  const [first] = water.sites
  const last = water.sites.at(-1)
  const tilt = (atMm: number): number =>
    first === undefined || last === undefined || first === last
      ? water.levelMm
      : first.levelMm +
        ((last.levelMm - first.levelMm) * (atMm - siteAt(channel, first.siteId))) /
          Math.max(1e-9, siteAt(channel, last.siteId) - siteAt(channel, first.siteId))
  return (
    <figure ref={ref} className="section-along">
      <svg className="drawing" width={width} height={scale.height} viewBox={`0 0 ${width} ${scale.height}`}>
        <title>Channel cut along its length</title>
        <rect className="pen-closure" {...box(-ends, -wall, 0, inside + wall)} />
        <rect className="pen-closure" {...box(channel.lengthMm, -wall, channel.lengthMm + ends, inside + wall)} />
        <polygon
          className="pen-water"
          points={[
            [from, 0],
            [from, tilt(from)],
            [to, tilt(to)],
            [to, 0]
          ]
            .map(([x = 0, y = 0]) => `${scale.x(x)},${scale.y(y)}`)
            .join(' ')}
        />
        <rect className="pen-wall" {...box(0, -wall, channel.lengthMm, 0)} />
        <FaceWithHoles channel={channel} part={part} box={box} inside={inside} wall={wall} />
        {channel.supports.map((support) => (
          <rect
            key={support.id}
            className="pen-support"
            {...box(
              support.atMm - support.alongMm / 2,
              -wall - support.heightMm,
              support.atMm + support.alongMm / 2,
              -wall
            )}
          />
        ))}
        {seats.map((seat) => (
          <RootZone key={seat.siteId} seat={seat} atMm={siteAt(channel, seat.siteId)} scale={scale} />
        ))}
        {seats.map((seat) =>
          seat.solids.map((solid, index) => (
            <SolidShape
              // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a stack stand in their order
              key={`${seat.siteId}-${index}`}
              solid={solid}
              atMm={siteAt(channel, seat.siteId)}
              scale={scale}
            />
          ))
        )}
        <line
          className="pen-level"
          x1={scale.x(from)}
          y1={scale.y(tilt(from))}
          x2={scale.x(to)}
          y2={scale.y(tilt(to))}
        />
        <line
          className="pen-end-level"
          x1={scale.x(from)}
          y1={scale.y(water.endLevelMm)}
          x2={scale.x(to)}
          y2={scale.y(water.endLevelMm)}
        />
        <text className="soft" x={scale.x(0) - 6} y={scale.y(inside / 2)} textAnchor="end">
          datum
        </text>
        <Dimension
          x1={scale.x(0)}
          x2={scale.x(channel.lengthMm)}
          y1={scale.height - 8}
          y2={scale.height - 8}
          text={say.length(channel.lengthMm)}
        />
        <LevelFigures
          channel={channel}
          part={part}
          scale={scale}
          letters={size.letters}
          levelMm={tilt(to)}
          x={scale.x(channel.lengthMm + ends) + 24}
        />
        <LevelHandle
          channel={channel}
          insideHeightMm={inside}
          levelMm={tilt(to)}
          x={scale.x(channel.lengthMm + ends) + 14}
          scale={scale}
        />
      </svg>
    </figure>
  )
}

const siteAt = (channel: Channel, siteId: string): number => channel.sites.find((site) => site.id === siteId)?.atMm ?? 0

interface FaceProps {
  readonly channel: Channel
  readonly part: ChannelPlan
  readonly inside: number
  readonly wall: number
  readonly box: (
    x1: number,
    y1: number,
    x2: number,
    y2: number
  ) => { x: number; y: number; width: number; height: number }
}

/** The upper face, open where holes are. */
function FaceWithHoles({ channel, part, inside, wall, box }: FaceProps) {
  const holes = part.layout.holes
    .filter(
      (hole) => hole.kind === 'site' || channel.openings.some((each) => each.id === hole.id && each.face === 'top')
    )
    .map((hole) => ({ from: hole.atMm - hole.diameterMm / 2, to: hole.atMm + hole.diameterMm / 2 }))
    .sort((a, b) => a.from - b.from)
  const starts = [0, ...holes.map((hole) => hole.to)]
  const ends = [...holes.map((hole) => hole.from), channel.lengthMm]
  return (
    <>
      {starts.map((start, index) => {
        const end = ends[index] ?? start
        return end > start ? (
          <rect key={start} className="pen-wall" {...box(start, inside, end, inside + wall)} />
        ) : null
      })}
    </>
  )
}
