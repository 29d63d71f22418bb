export type { Evidence, EvidenceByField, Grade } from './evidence'
