import { DEMOS } from '../../shared-model/design'
import type { Paper } from '../../shared-model/paper'
import { evaluate, type Plan } from '../../shared-model/plan'
import { buildSheet, type SheetData, type SheetOptions } from '../../shared-model/sheet'

const [kitchen, market] = DEMOS
if (kitchen === undefined || market === undefined) throw new Error('two demo designs are wanted')

/** The kitchen demo on A4 in millimetres, the market demo on Letter in inches. */
export const demoFor = (paper: Paper) => (paper === 'a4' ? kitchen : market)

export const demoPlan = (paper: Paper): Plan => evaluate(demoFor(paper).design, demoFor(paper).workshop, '2026-03-14')

export const demoSheet = (paper: Paper, options: Partial<SheetOptions> = {}): SheetData =>
  buildSheet(demoPlan(paper), demoFor(paper).design, demoFor(paper).workshop, options)
