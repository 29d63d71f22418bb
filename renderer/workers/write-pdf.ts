import plain from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url'
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url'
import pdfmake from 'pdfmake'
import { askForFullSize, docDefinition, FONT_FILES, fontFamilies, type PdfDocument } from '../../shared-model/paper'
import type { SheetData } from '../../shared-model/sheet'

/** What the writer's own types leave out: the virtual file system that the faces are read from. */
interface PdfWriter {
  readonly virtualfs: { readonly writeFileSync: (name: string, bytes: Uint8Array) => void }
  readonly setFonts: (fonts: ReturnType<typeof fontFamilies>) => void
  readonly setProgressCallback: (tell: (share: number) => void) => void
  readonly setUrlAccessPolicy: (allows: () => boolean) => void
  readonly createPdf: (document: PdfDocument) => {
    readonly getStream: () => Promise<unknown>
    readonly getBuffer: () => Promise<Uint8Array>
  }
}

const ADDRESSES: Readonly<Record<string, string>> = {
  'DejaVuSansCondensed.ttf': plain,
  'DejaVuSansCondensed-Bold.ttf': bold
}

const isWriter = (value: unknown): value is PdfWriter =>
  typeof value === 'object' && value !== null && 'virtualfs' in value && 'createPdf' in value

let ready: Promise<PdfWriter> | undefined

/** A step worth telling: the writer tells after every piece of every page. */
const STEP = 0.02

/**
 * The build sheet as PDF bytes (streams left open when they are to be compared), and how many pages it has. Tells how much
 * of it is drawn, from 0 to 1, once the pages are laid out. Only the page's own two faces are read.
 */
export async function writePdf(
  sheet: SheetData,
  paper: 'letter' | 'a4',
  uncompressed = false,
  tell: (share: number) => void = () => {}
): Promise<{ readonly pdf: Uint8Array<ArrayBuffer>; readonly pages: number }> {
  ready ??= prepare()
  const writer = await ready
  let told = Number.NEGATIVE_INFINITY
  writer.setProgressCallback((share) => {
    if (share < told + STEP) return
    told = share
    tell(share)
  })
  let pages = 0
  const document = docDefinition(sheet, { paper, uncompressed })
  const counted: PdfDocument = {
    ...document,
    footer: (page, of, size) => {
      pages = of
      return document.footer(page, of, size)
    }
  }
  const pdf = writer.createPdf(counted)
  if (!askForFullSize(await pdf.getStream())) throw new Error('the PDF writer keeps its viewer preferences elsewhere')
  return { pdf: new Uint8Array(await pdf.getBuffer()), pages }
}

async function prepare(): Promise<PdfWriter> {
  const writer: unknown = pdfmake
  if (!isWriter(writer)) throw new Error('the PDF writer has no virtual file system')
  for (const { name, file } of FONT_FILES) {
    const answer = await fetch(ADDRESSES[file] ?? file)
    if (!answer.ok) throw new Error(`the face ${file} could not be read`)
    writer.virtualfs.writeFileSync(name, new Uint8Array(await answer.arrayBuffer()))
  }
  writer.setFonts(fontFamilies())
  writer.setUrlAccessPolicy(() => false)
  return writer
}
