import type { CropsProblem } from './codes'
import type { Crop } from './crop'
/** Everything about a crop's figures that cannot be, each with both bounds. */
export declare function checkCrop(crop: Crop): readonly CropsProblem[]
