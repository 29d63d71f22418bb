import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import pdfmake from 'pdfmake'
import {
  askForFullSize,
  FONT_FILES,
  FONT_FOLDER,
  FONT_PACKAGE,
  fontFamilies,
  type PdfDocument
} from '../../shared-model/paper'

/** What the writer's own types leave out: the virtual file system that the faces are read from. */
interface PdfWriter {
  readonly virtualfs: { existsSync(name: string): boolean; writeFileSync(name: string, bytes: Uint8Array): void }
  setFonts(fonts: ReturnType<typeof fontFamilies>): void
  setUrlAccessPolicy(allows: () => boolean): void
  setLocalAccessPolicy(allows: () => boolean): void
  createPdf(document: PdfDocument): { getStream(): Promise<unknown>; getBuffer(): Promise<Uint8Array> }
}

const isWriter = (value: unknown): value is PdfWriter =>
  typeof value === 'object' && value !== null && 'virtualfs' in value && 'createPdf' in value

let ready: Promise<PdfWriter> | undefined

/**
 * A document as PDF bytes. Nothing is fetched and no file but the two faces is read. The same document gives the same
 * bytes. Throws when the writer has changed so that viewers can no longer be asked to print at full size.
 */
export const writePdf = async (document: PdfDocument): Promise<Uint8Array> => {
  ready ??= prepare()
  const writer = await ready
  const pdf = writer.createPdf(document)
  if (!askForFullSize(await pdf.getStream())) throw new Error('the PDF writer keeps its viewer preferences elsewhere')
  return pdf.getBuffer()
}

const prepare = async (): Promise<PdfWriter> => {
  if (!isWriter(pdfmake)) throw new Error('the PDF writer has no virtual file system')
  const folder = join(dirname(createRequire(import.meta.url).resolve(`${FONT_PACKAGE}/package.json`)), FONT_FOLDER)
  for (const { name, file } of FONT_FILES) pdfmake.virtualfs.writeFileSync(name, await readFile(join(folder, file)))
  pdfmake.setFonts(fontFamilies())
  pdfmake.setUrlAccessPolicy(() => false)
  pdfmake.setLocalAccessPolicy(() => false)
  return pdfmake
}
