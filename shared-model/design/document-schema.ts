/**
 * The schema that a document's text says it has: a whole number from 1, or null where it says none. Reads no further: the
 * document itself is the parser's to check.
 */
export function documentSchema(text: string): number | null {
  try {
    const value: unknown = JSON.parse(text)
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, 'schema')) return null
    const { schema } = value as { readonly schema: unknown }
    return typeof schema === 'number' && Number.isInteger(schema) && schema >= 1 ? schema : null
  } catch {
    return null
  }
}
