export { buildSheet } from './build-sheet'
export type {
  CircleShape,
  Drawing,
  Fill,
  Lettering,
  LineShape,
  Pen,
  PointMm,
  PolygonShape,
  RectShape,
  Shape,
  TextShape
} from './drawing'
export { circle, line, point, polygon, rect, text } from './drawing'
export { fittedText, textWidthMm } from './lettering'
export type { SheetOptions } from './options'
export { WHOLE_SHEET } from './options'
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
  TitleBlock,
  TitleFields
} from './sheet-data'
export { SHEET_PARTS } from './sheet-data'
export { shifted } from './shifted'
