import type { TitleBlock } from '../sheet'
import { BARE_EDGE_MM, pt } from './page'
import type { PdfNode, PdfTable, PdfTableLayout } from './pdf-node'
import { oneRun } from './right-to-left'
import { withinEm } from './word-width'

/** Room for texts of any length in one line of 9 pt on the narrower paper, 55 em of it: they stand whole in the title block. */
const TITLE_EM = 25
const NUMBER_EM = 9
const REVISION_EM = 5
const MAKER_EM = 22

const band = (top: number, bottom: number): PdfTableLayout => ({
  hLineWidth: (line, node) => (line === 0 ? top : line === node.table.body.length ? bottom : 0),
  vLineWidth: () => 0,
  paddingLeft: () => 0,
  paddingRight: () => 0,
  paddingTop: () => 2.5,
  paddingBottom: () => 3
})

/** Top of every page: what the sheet is, its number and revision, and which sheet of how many. */
export const pageHeader = (block: TitleBlock, sideMm: number, page: string): PdfTable => ({
  margin: [pt(sideMm), pt(BARE_EDGE_MM), pt(sideMm), 0],
  table: {
    widths: ['*', 'auto'],
    body: [
      [
        {
          text: [{ text: oneRun(withinEm(block.title, TITLE_EM)), bold: true }, { text: `   ${block.documentType}` }],
          style: 'frame'
        },
        {
          text: [
            {
              text: [
                withinEm(block.number, NUMBER_EM),
                block.revision === '' ? '' : `rev ${withinEm(block.revision, REVISION_EM)}`
              ]
                .filter((part) => part !== '')
                .join(' · ')
            },
            { text: page === '' ? '' : `   ${page}`, bold: true }
          ],
          style: 'frame',
          alignment: 'right'
        }
      ]
    ]
  },
  layout: band(0, 0.9)
})

/** Foot of every page: units, graduation, maker and date. */
export const pageFooter = (block: TitleBlock, sideMm: number): PdfNode => ({
  margin: [pt(sideMm), pt(3), pt(sideMm), 0],
  table: {
    widths: ['*', 'auto'],
    body: [
      [
        {
          text: [oneRun(withinEm(block.maker, MAKER_EM)), block.date].filter((part) => part !== '').join(' · '),
          style: 'frame'
        },
        {
          text: [block.units, block.graduation].filter((part) => part !== '').join(' · '),
          style: 'frame',
          alignment: 'right'
        }
      ]
    ]
  },
  layout: band(0.5, 0)
})
