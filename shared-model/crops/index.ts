export { CROPS, crop } from './catalogue'
export { checkCrop } from './check-crop'
export type { CropsProblem, CropsProblemCodes } from './codes'
export type { Crop, Span } from './crop'
