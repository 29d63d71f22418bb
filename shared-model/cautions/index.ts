export type { Caution, SignalWord } from './caution'
