import {
  type Design,
  type DocumentProblem,
  type Parsed,
  parseDesignText,
  parseWorkshopText,
  type Workshop
} from '../../shared-model/design'
import { problemText } from '../../shared-model/words'
import { readDocument } from '../files/read-document'

export type ReadFile<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string }

/** A design file, or one line that names the file and the first field that is wrong. */
export const readDesignFile = (path: string): Promise<ReadFile<Design>> => readFileAs(path, parseDesignText)

export const readWorkshopFile = (path: string): Promise<ReadFile<Workshop>> => readFileAs(path, parseWorkshopText)

const readFileAs = async <T>(path: string, parse: (text: string) => Parsed<T>): Promise<ReadFile<T>> => {
  const document = await readDocument(path)
  if (!document.ok) return { ok: false, problem: `${path}: ${document.problem.code.replace(/-/g, ' ')}` }
  const parsed = parse(document.value.text)
  if (parsed.ok) return parsed
  const [first] = parsed.problem
  const more = parsed.problem.length > 1 ? ` (and ${parsed.problem.length - 1} more)` : ''
  return {
    ok: false,
    problem: first === undefined ? `${path}: cannot be used` : `${path}: ${placed(first)}${more}`
  }
}

/** The words for a problem, the field's path before them where it has one. */
const placed = (problem: DocumentProblem): string => {
  const { field } = { field: '', ...problem.figures }
  return field === '' ? problemText(problem) : `${field}: ${problemText(problem)}`
}
