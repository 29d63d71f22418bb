import type { DocumentProblem } from './problem'

/** Deepest nesting and most values of a document, counted on its text before it is read. */
export const MOST_DEPTH = 64
export const MOST_VALUES = 2_000_000

const QUOTE = 34
const BACKSLASH = 92

/** The problem when a JSON text is nested too deep or holds too many values, or null. Looks at each character once. */
export const tooDeepOrMany = (text: string): DocumentProblem | null => {
  let depth = 0
  let values = 1
  let inText = false
  for (let k = 0; k < text.length; k += 1) {
    const unit = text.charCodeAt(k)
    if (inText) {
      if (unit === BACKSLASH) k += 1
      else if (unit === QUOTE) inText = false
    } else if (unit === QUOTE) inText = true
    else if (unit === 91 || unit === 123) {
      depth += 1
      values += 1
      if (depth > MOST_DEPTH) return { code: 'document-too-deep', figures: { mostDepth: MOST_DEPTH } }
    } else if (unit === 93 || unit === 125) depth -= 1
    else if (unit === 44) {
      values += 1
      if (values > MOST_VALUES) return { code: 'document-too-many-values', figures: { most: MOST_VALUES } }
    }
  }
  return null
}
