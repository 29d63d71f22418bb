export type { Evidence, EvidenceByField, Grade } from './evidence'
export { SOURCES, source } from './register'
export type { SourceEntry } from './source-entry'
