export type { ChannelLayout, HoleAt, Outline, SillSize } from './channel-layout'
export type { Channel, Heading, Obstacle, OpeningKind, ServiceOpening, Sill, Site, Support } from './layout'
