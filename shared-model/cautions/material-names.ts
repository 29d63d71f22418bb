import type { MaterialId } from '../materials'

/** What the conditions call a wall's material; of an unknown one every name that a condition asks for. */
export const materialNames = (material: MaterialId): readonly string[] => {
  if (material === 'unknown') return ['pvc', 'polystyrene', 'acrylic', 'aluminium', 'galvanised-steel']
  return [material === 'ps' ? 'polystyrene' : material]
}

export const METALS: ReadonlySet<string> = new Set(['aluminium', 'galvanised-steel', 'zinc', 'copper'])
