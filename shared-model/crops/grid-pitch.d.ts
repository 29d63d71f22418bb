/**
 * The pitch of a square grid with so many plants on a square metre.
 *
 *     pitch = 1000 / sqrt(plants per m2)
 *
 * Symbols: pitch in mm. Valid for more than 0 and up to 10 000 plants per square metre, else a problem with both bounds. Published spacing
 * tables give centimetres and plants per area side by side without their being such a pair: neither is derived from the other there.
 *
 * @source spacing-fao
 */
import { type Result } from '../outcome'
import { type Mm } from '../units'
import type { CropsProblem } from './codes'
export declare function gridPitch(plantsPerM2: number): Result<Mm, CropsProblem>
