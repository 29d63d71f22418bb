import type { Channel, Heading } from './layout'

/**
 * Channels as a mirror across the sill's middle shows them: what stood at x stands at length − x. A channel along the sill
 * turns its heading; one across the sill keeps it, and its front and back openings change sides.
 */
export function mirrorChannels(channels: readonly Channel[], sillLengthMm: number): readonly Channel[] {
  return channels.map((channel) => ({
    ...channel,
    xMm: sillLengthMm - channel.xMm,
    heading: mirrored(channel.heading),
    openings: channel.openings.map((opening) => {
      // Front and back are the channel's own sides; the mirror swaps which of them lies to the left of the way it runs.
      if (opening.face === 'front') return { ...opening, face: 'back' as const }
      if (opening.face === 'back') return { ...opening, face: 'front' as const }
      return opening
    })
  }))
}

function mirrored(heading: Heading): Heading {
  if (heading === 0) return 180
  if (heading === 180) return 0
  return heading
}
