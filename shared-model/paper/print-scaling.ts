/** The part of the PDF writer's document that holds what a viewer is asked for. */
interface PdfCatalog {
  readonly _root: { readonly data: { readonly ViewerPreferences?: { readonly data: Record<string, unknown> } } }
}

const hasCatalog = (pdf: unknown): pdf is PdfCatalog =>
  typeof pdf === 'object' && pdf !== null && '_root' in pdf && typeof pdf._root === 'object' && pdf._root !== null

/**
 * Asks viewers to print at full size (`/PrintScaling /None`, PDF 1.6, ISO 32000-1 table 150). The writer has no option
 * for it; it keeps its viewer preferences in a dictionary that is still open until the file is ended.
 *
 * @returns false when the writer keeps it elsewhere, so that a host can say so instead of printing a wrong scale.
 * @source iso-32000-1
 */
export const askForFullSize = (pdf: unknown): boolean => {
  if (!hasCatalog(pdf)) return false
  const preferences = pdf._root.data?.ViewerPreferences
  if (preferences === undefined) return false
  preferences.data.PrintScaling = 'None'
  return true
}
