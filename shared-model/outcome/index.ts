export type {
  Budget,
  Figure,
  FindingOf,
  Fix,
  ProblemOf,
  RangeProblemCodes,
  Result,
  Severity,
  Where
} from './outcome'
export { failed, ok } from './outcome'
