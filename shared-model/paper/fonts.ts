/**
 * The faces of the sheet. Each is known to the PDF writer by its PostScript name, which is also its name in the writer's
 * virtual file system: text set in drawings then finds the face that is already loaded, in every host alike.
 */
export interface FontFile {
  readonly name: string
  /** File in the font package. */
  readonly file: string
}

export const FONT_FILES: readonly FontFile[] = [
  { name: 'DejaVuSansCondensed', file: 'DejaVuSansCondensed.ttf' },
  { name: 'DejaVuSansCondensed-Bold', file: 'DejaVuSansCondensed-Bold.ttf' }
]

/** The package that carries the font files, and its folder. */
export const FONT_PACKAGE = 'dejavu-fonts-ttf'
export const FONT_FOLDER = 'ttf'

/** The family as the PDF writer wants it: every style must be named, and the sheet uses no slanted one. */
export const fontFamilies = () => ({
  DejaVu: {
    normal: 'DejaVuSansCondensed',
    bold: 'DejaVuSansCondensed-Bold',
    italics: 'DejaVuSansCondensed',
    bolditalics: 'DejaVuSansCondensed-Bold'
  }
})
