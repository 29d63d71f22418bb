import { memo, useEffect, useMemo, useRef } from 'react'
import { Layer, Shape, Stage } from 'react-konva'
import { useStore } from 'zustand'
import type { Shows } from '../../shared-model/design'
import { afterPaint } from '../drawing/after-paint'
import { useLivePlan } from '../plan/use-plan'
import { useApp } from '../store/use-app'
import { boardStore } from './board-store'
import { ChannelShape } from './ChannelShape'
import type { ChannelPicture } from './paint/channel-picture'
import type { Ink } from './paint/ink'
import {
  paintChannelDimensions,
  paintGesture,
  paintHandles,
  paintMassCentre,
  paintSillDimensions
} from './paint/overlay'
import { paintPinned } from './paint/pinned'
import { paintRulers } from './paint/rulers'
import { paintSill, paintWindow, type SillPicture } from './paint/sill'
import { useInk } from './paint/use-ink'
import { boardStage } from './picture/board-stage'
import { pictureMaker, sameListMaker } from './pictures'
import type { Scale, Size } from './scale'

/** The sill from above, to scale. What rests is on a layer of its own; what is chosen, and so may move, is drawn over it. */
export function BoardCanvas() {
  const ink = useInk()
  const plan = useLivePlan()
  const size = useStore(boardStore, (state) => state.size)
  const scale = useStore(boardStore, (state) => state.scale)
  const gesture = useStore(boardStore, (state) => state.gesture)
  const live = useStore(boardStore, (state) => state.live)
  const pinFrom = useStore(boardStore, (state) => state.pinFrom)
  const channels = useApp((state) => state.design.channels)
  const sill = useApp((state) => state.design.sill)
  const dimensions = useApp((state) => state.design.dimensions)
  const notes = useApp((state) => state.design.notes)
  const shows = useApp((state) => state.workshop.shows)
  const selection = useApp((state) => state.selection)
  const canopies = useApp((state) => state.view.canopies)
  const maker = useRef(pictureMaker())
  const sameResting = useRef(sameListMaker<ChannelPicture>())
  const pictures = useMemo(
    () => maker.current(channels, plan.channels, selection, canopies),
    [channels, plan.channels, selection, canopies]
  )
  const { lengthMm, depthMm } = plan.sill
  const { clearanceMm, obstacles } = sill
  const picture = useMemo(
    () => ({ lengthMm, depthMm, clearanceMm, obstacles }),
    [lengthMm, depthMm, clearanceMm, obstacles]
  )
  const resting = sameResting.current(pictures.filter((each) => !each.chosen))
  const chosen = pictures.filter((each) => each.chosen)
  const only = chosen.length === 1 ? chosen[0] : undefined
  const tool = useApp((state) => state.view.tool)
  // A dimension begun is given up with its tool.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change that counts
  useEffect(() => boardStore.setState({ pinFrom: null }), [tool])
  const sized = size.width > 0
  // A frame later than it is painted: by then it is on the window, whatever else the browser does between.
  useEffect(() => (sized ? afterPaint(() => boardStore.setState({ drawn: true }), 2) : undefined), [sized])
  // The layers stand before the size is known: one that comes with its shapes in it is drawn twice.
  return (
    <Stage ref={boardStage} width={size.width} height={size.height} listening={false}>
      <Layer listening={false}>
        {sized ? (
          <Resting resting={resting} picture={picture} scale={scale} size={size} shows={shows} ink={ink} />
        ) : null}
      </Layer>
      <Layer listening={false}>
        {sized
          ? chosen.map((each) => <ChannelShape key={each.channel.id} picture={each} scale={scale} ink={ink} />)
          : null}
        {sized ? (
          <Shape
            sceneFunc={(context) => {
              const ctx = context._context
              if (only !== undefined) {
                paintChannelDimensions(ctx, scale, only, shows, ink)
                paintHandles(ctx, scale, only, ink)
              }
              paintPinned(
                ctx,
                scale,
                { channels, dimensions, notes, pinFrom, pinnedId: selection.pinnedId },
                plan.sill,
                shows,
                ink
              )
              if (pictures.length > 0) paintMassCentre(ctx, scale, plan.load.centre, ink)
              paintGesture(ctx, scale, { gesture, live, size }, shows, ink)
              paintRulers(ctx, scale, size, shows.units, ink)
            }}
          />
        ) : null}
      </Layer>
    </Stage>
  )
}

interface RestingProps {
  readonly resting: readonly ChannelPicture[]
  readonly picture: SillPicture
  readonly scale: Scale
  readonly size: Size
  readonly shows: Shows
  readonly ink: Ink
}

/** What stays where it is: as long as none of it changes its layer is not drawn again, however the hand moves. */
const Resting = memo(function Resting({ resting, picture, scale, size, shows, ink }: RestingProps) {
  return (
    <>
      <Shape
        sceneFunc={(context) => {
          const ctx = context._context
          ctx.fillStyle = ink.room
          ctx.fillRect(0, 0, size.width, size.height)
          paintSill(ctx, scale, picture, ink)
          paintSillDimensions(ctx, scale, picture, shows, ink)
        }}
      />
      {resting.map((each) => (
        <ChannelShape key={each.channel.id} picture={each} scale={scale} ink={ink} />
      ))}
      <Shape sceneFunc={(context) => paintWindow(context._context, scale, picture, ink)} />
    </>
  )
})
