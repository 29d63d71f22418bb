export { buildSheet } from './build-sheet'
export type {
  Drawing,
  Fill,
  LineShape,
  Pen,
  PointMm,
  Shape,
  TextShape
} from './drawing'
export { circle, line, point, polygon, rect, text } from './drawing'
export { fittedText, textWidthMm } from './lettering'
export type { SheetOptions } from './options'
export { TICK } from './printed'
export type {
  BigBlock,
  Block,
  CautionBlock,
  Cell,
  ChannelTemplate,
  Column,
  FactsBlock,
  FigureBlock,
  LabelsBlock,
  SheetData,
  SheetPart,
  SheetSection,
  TableBlock,
  TemplateHole,
  TextBlock,
  TitleBlock
} from './sheet-data'
export { SHEET_PARTS } from './sheet-data'
export { shifted } from './shifted'
export { sillDrawing } from './sill-drawing'
