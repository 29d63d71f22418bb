import type { Crop } from './crop'
/** Crops to start from; what no source gives is graded from memory, and what is not known is null. */
export declare const CROPS: readonly Crop[]
/** The crop with this id; undefined when the catalogue has none. */
export declare const crop: (id: string) => Crop | undefined
