import type { Anchor, Design } from '../design'
import type { Fit } from './fits'

/**
 * The design with a proposed layout in place of its channels. Notes stay, and so do dimensions between edges of the sill;
 * dimensions to the old channels go with them.
 */
export function takeFit(design: Design, { design: made }: Pick<Fit, 'design'>): Design {
  const { channels, seats, parts, crops } = made
  const onSill = ({ kind }: Anchor): boolean => kind === 'sill'
  const dimensions = design.dimensions.filter(({ from, to }) => onSill(from) && onSill(to))
  return { ...design, channels, seats, parts, crops, dimensions }
}
