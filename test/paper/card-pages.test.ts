import { describe, expect, test } from 'vitest'
import { writePdf } from '../../main/services/pdf'
import { CAUTIONS } from '../../shared-model/cautions'
import type { Design } from '../../shared-model/design'
import { docDefinition, type Paper } from '../../shared-model/paper'
import type { Plan } from '../../shared-model/plan'
import { buildSheet, type SheetData } from '../../shared-model/sheet'
import { cautionText, sayIn } from '../../shared-model/words'
import { readPdf, type Sheet } from '../sheet/read-pdf'
import { demoFor, demoPlan } from './demo-sheet'

const PAPERS: readonly Paper[] = ['letter', 'a4']
const USERS = ['handling', 'place', 'electric', 'nutrient', 'food', 'biology']
/** Most that the parser takes: channels in a design, signs in a name. */
const MOST_CHANNELS = 120
const MOST_SIGNS = 200

const solid = (words: string): string => words.replace(/[\s\u200b]/g, '')

/** The demo's first channel so many times, of so many different fill lines and profiles, with every caution there is. */
const cardFor = (
  paper: Paper,
  channels: number,
  kinds: number,
  names: (index: number) => string,
  title: string
): { readonly sheet: SheetData; readonly plan: Plan; readonly design: Design } => {
  const { design, workshop } = demoFor(paper)
  const plan = demoPlan(paper)
  const [channel] = design.channels
  const [planned] = plan.channels
  const [profile] = design.parts.profiles
  if (channel === undefined || planned === undefined || profile === undefined) throw new Error('a channel is wanted')
  const many = Array.from({ length: channels }, (_, index) => ({
    ...channel,
    id: `t${index}`,
    profileId: `p${index % kinds}`
  }))
  const all: Plan = {
    ...plan,
    channels: many.map(({ id }, index) => ({
      ...planned,
      channelId: id,
      mark: `${index + 1}`,
      water: { ...planned.water, litres: 1 + (index % kinds) / 4, fromTopMm: 20 + (index % kinds) }
    })),
    cautions: CAUTIONS.map(({ condition: _condition, ...entry }) => ({
      ...entry,
      bold: false,
      figures: { filledWeightG: 12_345, sillLoadG: 23_456 }
    }))
  }
  const drawn: Design = {
    ...design,
    title,
    maker: title,
    channels: many,
    parts: {
      ...design.parts,
      profiles: Array.from({ length: kinds }, (_, index) => ({ ...profile, id: `p${index}`, name: names(index) }))
    }
  }
  return { sheet: buildSheet(all, drawn, workshop, { parts: ['buyers-card'] }), plan: all, design: drawn }
}

const pagesOf = async (sheet: SheetData, paper: Paper): Promise<readonly Sheet[]> =>
  (await readPdf(await writePdf(docDefinition(sheet, { paper })))).sheets

/** What stands between header and footer. */
const wordsOn = ({ heightMm, lettering }: Sheet): string =>
  lettering
    .filter(({ yMm }) => yMm > 20 && yMm < heightMm - 20)
    .map(({ text }) => solid(text))
    .join('')

/** All of the card as one text, without the titles of the pages that it goes on to. */
const wordsOf = (pages: readonly Sheet[], title: string): string =>
  pages.map((page) => wordsOn(page).replace(solid(`Card for the buyer: ${title}, continued`), '')).join('')

/** Nothing that the card has to say is lost, and none of it is smaller than 9 pt. */
const nothingLost = (pages: readonly Sheet[], { plan, design }: { plan: Plan; design: Design }, paper: Paper): void => {
  const text = wordsOf(pages, design.title)
  const { shows } = demoFor(paper).workshop
  const users = plan.cautions.filter(({ category }) => USERS.includes(category))
  expect(users.length).toBeGreaterThan(15)
  const missing = (wanted: readonly string[]): readonly string[] =>
    wanted.filter((words) => !text.includes(solid(words)))
  expect(missing(users.map((caution) => cautionText(caution, sayIn(shows))))).toEqual([])
  expect(missing(plan.channels.map(({ water }) => sayIn(shows).length(water.fromTopMm)))).toEqual([])
  expect(missing(design.parts.profiles.map(({ name }) => name))).toEqual([])
  expect(
    missing(['What it is made of', 'Where it may stand', 'Between crops', 'No load that a sill can bear'])
  ).toEqual([])
  for (const page of pages) {
    for (const one of page.lettering) {
      expect(one.sizePt).toBeGreaterThan(8.9)
      expect(one.yMm, one.text).toBeLessThan(page.heightMm - 12.7)
      expect(one.xMm + one.widthMm, one.text).toBeLessThan(page.widthMm - 12.7)
    }
  }
}

describe.each(PAPERS)('the card for the buyer on %s', (paper) => {
  test('is one page with every caution for its user, of twelve channels of three kinds', async () => {
    const card = cardFor(paper, 12, 3, (index) => `Downpipe no. ${index + 1}`, 'Long shelf')
    const pages = await pagesOf(card.sheet, paper)
    expect(pages.length).toBe(1)
    nothingLost(pages, card, paper)
  })

  test('goes on to a second page that says so, of twelve kinds of channel with every caution', async () => {
    const card = cardFor(paper, 12, 12, (index) => `Downpipe of kind no. ${index + 1}`, 'Long shelf')
    const pages = await pagesOf(card.sheet, paper)
    expect(pages.length).toBe(2)
    nothingLost(pages, card, paper)
    const [first = '', second = ''] = pages.map(wordsOn)
    expect(first).toMatch(/^Cardforthebuyer:Longshelf(?!,continued)/)
    expect(second).toMatch(/^Cardforthebuyer:Longshelf,continuedTakecare/)
    expect(pages[1]?.lettering.some(({ text }) => text.includes('Card 2 of 2'))).toBe(true)
  })

  test('loses nothing of the most that a design can hold', async () => {
    const long = (index: number): string => `${index} ${'Wide downpipe '.repeat(20)}`.slice(0, MOST_SIGNS).trim()
    const title = 'A title as long as any '.repeat(10).slice(0, MOST_SIGNS).trim()
    const card = cardFor(paper, MOST_CHANNELS, MOST_CHANNELS, long, title)
    const pages = await pagesOf(card.sheet, paper)
    nothingLost(pages, card, paper)
    // Each page is one that was laid out: none ran over by itself.
    for (const page of pages) expect(wordsOn(page).slice(0, 20)).toMatch(/^Cardforthebuyer:/)
    expect(pages.length).toBeLessThan(14)
  })
})
