export type { Crop, Span } from './crop'
