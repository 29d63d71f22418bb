/**
 * Mass of a metre of profile.
 *
 *     mass = (outside area - bore area) * density
 *
 * Symbols: areas in mm2 by the average wall, density in g/cm3, mass in g per metre (1 mm2 x 1 m x 1 g/cm3 = 1 g). Trunking is
 * weighed with its lid. Corrugated sheet weighs more by its folds, which no source gives.
 *
 * @source pvc-pipe-weight
 */
import { type Grams, grams } from '../units'
import { boreArea } from './bore-area'
import { outsideArea } from './outside-area'
import type { Section } from './profile'

export const massPerMetre = (section: Section, densityGPerCm3: number): Grams =>
  grams((outsideArea(section) - boreArea(section)) * densityGPerCm3)
