export type { ChannelLoad, MassCentre, Sag, SillLoad } from './load'
