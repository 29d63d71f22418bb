import { memo } from 'react'
import { Shape } from 'react-konva'
import { paintChannel } from './paint/channel'
import type { ChannelPicture } from './paint/channel-picture'
import type { Ink } from './paint/ink'
import type { Scale } from './scale'

export interface ChannelShapeProps {
  readonly picture: ChannelPicture
  readonly scale: Scale
  readonly ink: Ink
}

/** One channel as one shape: drawn at once, however many holes it has. */
export const ChannelShape = memo(function ChannelShape({ picture, scale, ink }: ChannelShapeProps) {
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(context) => paintChannel(context._context, scale, picture, ink)}
    />
  )
})
