import type { FigureShelf } from '../../../catalogue/figures'

export const SHELF_NAMES: Readonly<Record<FigureShelf, string>> = {
  profiles: 'Profiles',
  closures: 'End closures',
  cups: 'Cups, risers’ cups among them',
  collars: 'Foam collars',
  plantCollars: 'Plant collars',
  saws: 'Hole saws'
}
