import type { BigBlock, Block, CautionBlock, Drawing, FactsBlock, LabelsBlock, TextBlock } from '../sheet'
import { CONTENT_WIDTH_MM, pt } from './page'
import { INK, PAPER, RULE, SIGNAL_GROUND } from './palette'
import type { PdfCell, PdfNode, PdfTableLayout } from './pdf-node'
import { svgText } from './svg'
import { tableContent } from './tables'
import { unbroken } from './unbroken'
import { cautionSign } from './warning-sign'

/** One block of the sheet as nodes for the PDF writer. A heading is kept with what it heads. */
export const blockContent = (block: Exclude<Block, { kind: 'title-fields' }>): PdfNode => {
  switch (block.kind) {
    case 'text':
      return textContent(block)
    case 'facts':
      return factsContent(block)
    case 'big':
      return bigContent(block)
    case 'table':
      return tableContent(block)
    case 'figure':
      return {
        unbreakable: true,
        ...(block.startsPage ? { pageBreak: 'before' as const } : {}),
        margin: [0, 0, 0, 12],
        stack: [
          ...heading(block.heading),
          drawingContent(block.drawing),
          ...(block.caption === '' ? [] : [{ text: unbroken(block.caption), style: 'note', margin: edges(0, 4, 0, 0) }])
        ]
      }
    case 'caution':
      return cautionContent(block)
    case 'labels':
      return labelsContent(block)
  }
}

export const drawingContent = (drawing: Drawing): PdfNode => ({
  svg: svgText(drawing, { unit: 'pt', fontFamily: 'DejaVu' }),
  width: pt(drawing.widthMm),
  font: 'DejaVu'
})

const edges = (left: number, top: number, right: number, bottom: number): [number, number, number, number] => [
  left,
  top,
  right,
  bottom
]

const heading = (words: string): PdfNode[] =>
  words === '' ? [] : [{ text: unbroken(words), style: 'subheading', margin: edges(0, 2, 0, 5) }]

const textContent = (block: TextBlock): PdfNode => {
  const runIn = block.runIn === true
  const [first, ...rest] = block.paragraphs.map(unbroken).map(
    (words, index): PdfNode => ({
      text:
        runIn && index === 0 && block.heading !== ''
          ? [{ text: `${unbroken(block.heading)}.  `, bold: true }, { text: words }]
          : words,
      bold: block.strong,
      margin: edges(0, 0, 0, runIn ? 1 : 4)
    })
  )
  const above = runIn ? [] : heading(block.heading)
  if (first === undefined) return { stack: heading(block.heading) }
  return {
    margin: edges(0, 0, 0, runIn ? 2 : 8),
    stack: [{ unbreakable: true, stack: [...above, first] }, ...rest]
  }
}

const bare = (above: number, between: number): PdfTableLayout => ({
  hLineWidth: (line, node) => (line === 0 || line === node.table.body.length ? above : between),
  vLineWidth: () => 0,
  hLineColor: () => RULE,
  paddingLeft: (column) => (column === 0 ? 0 : 8),
  paddingRight: () => 0,
  paddingTop: () => 3,
  paddingBottom: () => 3
})

const factsContent = (block: FactsBlock): PdfNode => {
  const rows: PdfCell[][] = []
  for (let from = 0; from < block.facts.length; from += block.columns) {
    const row: PdfCell[] = block.facts.slice(from, from + block.columns).map((fact) => ({
      stack: [
        { text: unbroken(fact.name), style: 'factName' },
        { text: unbroken(fact.value), style: 'factValue' }
      ]
    }))
    while (row.length < block.columns) row.push({ text: '' })
    rows.push(row)
  }
  return {
    unbreakable: true,
    margin: edges(0, 0, 0, 8),
    stack: [
      ...heading(block.heading),
      {
        table: { dontBreakRows: true, widths: Array.from({ length: block.columns }, () => '*' as const), body: rows },
        layout: bare(0.6, 0.35)
      }
    ]
  }
}

const bigContent = (block: BigBlock): PdfNode => ({
  unbreakable: true,
  margin: edges(0, 0, 0, 14),
  table: {
    widths: block.figures.map(() => '*' as const),
    body: [
      block.figures.map(
        (figure): PdfCell => ({
          stack: [
            { text: figure.name, style: 'factName' },
            { text: figure.value, style: 'big' },
            ...(figure.note === '' ? [] : [{ text: unbroken(figure.note), style: 'factName' }])
          ]
        })
      )
    ]
  },
  layout: bare(1.2, 1.2)
})

/** A panel with its signal word in black and white, so that it keeps its rank on a grey printer. */
const cautionContent = (block: CautionBlock): PdfNode => {
  const severe = block.signalWord === 'DANGER' || block.signalWord === 'WARNING'
  const panel: PdfCell = {
    fillColor: severe ? INK : SIGNAL_GROUND,
    margin: edges(5, 4, 2, 4),
    columns: [
      { width: pt(6.5), ...drawingContent(cautionSign(block.signalWord, severe)) },
      {
        width: '*',
        text: block.signalWord,
        style: 'signal',
        color: severe ? PAPER : INK,
        margin: edges(0, 3, 0, 0)
      }
    ],
    columnGap: 5
  }
  // Held together by spaces that do not break.
  const foot = [block.signs, block.sources]
    .filter((part) => part !== '')
    .join('   ')
    .replace(/ /g, '\u00a0')
  const words: PdfCell = {
    margin: edges(4, 3, 4, 3),
    stack: [
      { text: unbroken(block.text), bold: true },
      { text: [{ text: `${unbroken(block.reason)}   ` }, { text: foot, style: 'note' }] }
    ]
  }
  return {
    unbreakable: true,
    margin: edges(0, 0, 0, 4),
    table: { dontBreakRows: true, widths: [pt(34), '*'], body: [[panel, words]] },
    layout: {
      hLineWidth: () => 0.8,
      vLineWidth: (line) => (line === 1 ? 0 : 0.8),
      paddingLeft: () => 0,
      paddingRight: () => 0,
      paddingTop: () => 0,
      paddingBottom: () => 0
    }
  }
}

/** Labels to cut out, two to a row, with dashed-like thin frames. */
const labelsContent = (block: LabelsBlock): PdfNode => {
  const cells = block.labels.map(
    (label): PdfCell => ({
      margin: edges(6, 5, 6, 5),
      stack: [
        { text: unbroken(label.title), bold: true, fontSize: 13, margin: edges(0, 0, 0, 2) },
        ...label.lines.map((words, index) => ({ text: unbroken(words), bold: index === label.lines.length - 1 }))
      ]
    })
  )
  const rows: PdfCell[][] = []
  for (let from = 0; from < cells.length; from += 2) {
    const left = cells[from] ?? { text: '' }
    rows.push([left, cells[from + 1] ?? { text: '', border: [true, false, false, false] }])
  }
  return {
    margin: edges(0, 0, 0, 12),
    table: { dontBreakRows: true, widths: [pt(CONTENT_WIDTH_MM / 2) - 2, pt(CONTENT_WIDTH_MM / 2) - 2], body: rows },
    layout: {
      hLineWidth: () => 0.6,
      vLineWidth: () => 0.6,
      paddingLeft: () => 0,
      paddingRight: () => 0,
      paddingTop: () => 0,
      paddingBottom: () => 0
    }
  }
}
