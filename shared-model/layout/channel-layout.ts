import type { Section } from '../profile'
import type { ServiceOpening } from './layout'

/** A rectangle on the sill, lower left corner and size. */
export interface Outline {
  readonly xMm: number
  readonly yMm: number
  readonly lengthMm: number
  readonly depthMm: number
}

export interface HoleAt {
  readonly id: string
  readonly kind: 'site' | 'opening'
  readonly face: ServiceOpening['face']
  /** From the datum end. */
  readonly atMm: number
  readonly diameterMm: number
  readonly xMm: number
  readonly yMm: number
}

/** One channel placed on the sill. */
export interface ChannelLayout {
  readonly channelId: string
  readonly section: Section
  readonly cutLengthMm: number
  /** Cut length plus what the closures add: this must fit the sill. */
  readonly overallLengthMm: number
  readonly outline: Outline
  /** Profile only, without its closures. */
  readonly body: Outline
  /** Underside of the channel above the sill's face. */
  readonly standsMm: number
  readonly holes: readonly HoleAt[]
  readonly canopies: readonly {
    readonly siteId: string
    readonly xMm: number
    readonly yMm: number
    readonly radiusMm: number
  }[]
  /** Webs between neighbouring holes and to the end closures, in order along the channel. */
  readonly webs: readonly {
    readonly fromId: string
    readonly toId: string
    readonly webMm: number
    readonly leastMm: number
  }[]
  /** Bore length between the closures' inner faces: where solution stands. */
  readonly wetLengthMm: number
  readonly wetFromMm: number
}

/** The sill with the least reading of each size. */
export interface SillSize {
  readonly lengthMm: number
  readonly depthMm: number
}
