import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import { editChannels } from '../../shared-model/design'
import type { Channel } from '../../shared-model/layout'
import { useActions } from '../store/use-app'
import { useSay } from '../store/use-say'
import type { SectionScale } from './section-scale'

export interface LevelHandleProps {
  readonly channel: Channel
  readonly insideHeightMm: number
  readonly levelMm: number
  readonly x: number
  readonly scale: SectionScale
}

/** The fill line's handle: drag it, or move it with the arrow keys by one percent of the inside height. */
export function LevelHandle({ channel, insideHeightMm, levelMm, x, scale }: LevelHandleProps) {
  const { drag, drop, editDesign } = useActions()
  const say = useSay()
  const held = useRef<{ readonly y: number; readonly share: number } | null>(null)
  const clamp = (share: number): number => Math.min(1, Math.max(0, Math.round(share * 1000) / 1000))
  const move = (event: PointerEvent): void => {
    const from = held.current
    if (from === null) return
    const fillShare = clamp(from.share + (from.y - event.clientY) / scale.pxPerMm / insideHeightMm)
    drag((design) => editChannels(design, [channel.id], { fillShare }))
  }
  const key = (event: KeyboardEvent): void => {
    const step = { ArrowUp: 0.01, ArrowRight: 0.01, ArrowDown: -0.01, ArrowLeft: -0.01, PageUp: 0.1, PageDown: -0.1 }[
      event.key
    ]
    if (step === undefined) return
    event.preventDefault()
    editDesign('change the fill', (design) =>
      editChannels(design, [channel.id], { fillShare: clamp(channel.fillShare + step) })
    )
  }
  const y = scale.y(levelMm)
  return (
    <g
      className="level-handle"
      role="slider"
      tabIndex={0}
      aria-label="Fill line"
      aria-orientation="vertical"
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={Math.round(channel.fillShare * 100)}
      aria-valuetext={`${say.share(channel.fillShare)} of the inside height`}
      onKeyDown={key}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId)
        held.current = { y: event.clientY, share: channel.fillShare }
      }}
      onPointerMove={move}
      onPointerUp={() => {
        held.current = null
        drop('change the fill')
      }}
    >
      <rect x={x - 12} y={y - 12} width={24} height={24} fill="transparent" />
      <circle cx={x} cy={y} r={6} />
    </g>
  )
}
