import { useEffect, useMemo, useRef } from 'react'
import { Layer, Shape, Stage } from 'react-konva'
import { useStore } from 'zustand'
import { useLivePlan } from '../plan/use-plan'
import { useApp } from '../store/use-app'
import { boardStore } from './board-store'
import { ChannelShape } from './ChannelShape'
import {
  paintChannelDimensions,
  paintGesture,
  paintHandles,
  paintMassCentre,
  paintSillDimensions
} from './paint/overlay'
import { paintPinned } from './paint/pinned'
import { paintRulers } from './paint/rulers'
import { paintSill, paintWindow } from './paint/sill'
import { useInk } from './paint/use-ink'
import { boardStage } from './picture/board-stage'
import { pictureMaker } from './pictures'

/** The sill from above, to scale. What rests is on a layer of its own; what moves is drawn over it. */
export function BoardCanvas() {
  const ink = useInk()
  const plan = useLivePlan()
  const { size, scale, gesture, live, pinFrom } = useStore(boardStore)
  const channels = useApp((state) => state.design.channels)
  const sill = useApp((state) => state.design.sill)
  const dimensions = useApp((state) => state.design.dimensions)
  const notes = useApp((state) => state.design.notes)
  const shows = useApp((state) => state.workshop.shows)
  const selection = useApp((state) => state.selection)
  const canopies = useApp((state) => state.view.canopies)
  const maker = useRef(pictureMaker())
  const pictures = useMemo(
    () => maker.current(channels, plan.channels, selection, canopies),
    [channels, plan.channels, selection, canopies]
  )
  const picture = useMemo(
    () => ({ ...plan.sill, clearanceMm: sill.clearanceMm, obstacles: sill.obstacles }),
    [plan.sill, sill.clearanceMm, sill.obstacles]
  )
  const moving =
    gesture?.kind === 'move' || gesture?.kind === 'pull' || gesture?.kind === 'site' || gesture?.kind === 'opening'
  const resting = moving ? pictures.filter((each) => !each.chosen) : pictures
  const chosen = pictures.filter((each) => each.chosen)
  const only = chosen.length === 1 ? chosen[0] : undefined
  const first = useRef(true)
  useEffect(() => {
    if (!first.current || size.width === 0) return
    first.current = false
    performance.mark('board-drawn')
  }, [size.width])
  if (size.width === 0) return null
  return (
    <Stage ref={boardStage} width={size.width} height={size.height} listening={false}>
      <Layer listening={false}>
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
      </Layer>
      <Layer listening={false}>
        {moving
          ? chosen.map((each) => <ChannelShape key={each.channel.id} picture={each} scale={scale} ink={ink} />)
          : null}
        <Shape
          sceneFunc={(context) => {
            const ctx = context._context
            if (only !== undefined) {
              paintChannelDimensions(ctx, scale, only, shows, ink)
              paintHandles(ctx, scale, only, ink)
            }
            paintPinned(ctx, scale, { channels, dimensions, notes, pinFrom }, plan.sill, shows, ink)
            if (pictures.length > 0) paintMassCentre(ctx, scale, plan.load.centre, ink)
            paintGesture(ctx, scale, { gesture, live, size }, shows, ink)
            paintRulers(ctx, scale, size, shows.units, ink)
          }}
        />
      </Layer>
    </Stage>
  )
}
