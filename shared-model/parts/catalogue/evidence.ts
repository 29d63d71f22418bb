import type { Evidence, EvidenceByField } from '../../sources'

/** A figure that a source prints. */
export const printedIn = (
  source: string,
  printed: string,
  grade: Evidence['grade'] = 'published-in-part'
): Evidence => ({
  grade,
  source,
  printed
})

export const FROM_MEMORY: Evidence = { grade: 'from-memory', source: 'memory' }
export const PRACTICE: Evidence = { grade: 'common-practice', source: 'practice' }

/** Evidence for every field named: from memory unless given. */
export function evidenceFor(fields: readonly string[], given: EvidenceByField): EvidenceByField {
  return { ...Object.fromEntries(fields.map((field) => [field, FROM_MEMORY])), ...given }
}

export const PROFILE_FIELDS = [
  'widthMm',
  'heightMm',
  'outsideToleranceMm',
  'averageWallMm',
  'leastWallMm',
  'cornerRadiusMm'
] as const
