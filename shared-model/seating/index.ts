export type { Hold, Interface, SawAdvice, SawOption, SeatFit } from './fit'
export type { Seat, StackItem } from './seat'
