import type { PricingFindingCodes, PricingProblemCodes } from '../pricing'
import { put, type Wording } from './wording'

export const PRICING_WORDS: Wording<PricingFindingCodes> = {
  'parcel-too-long': ({ lengthMm, mostMm }, say) =>
    put(
      'The parcel is too long for the carrier',
      `${say.length(lengthMm)}; the most is ${say.length(mostMm)}. Make it shorter, or in two parts.`
    ),
  'parcel-girth-over': ({ lengthPlusGirthMm, mostMm }, say) =>
    put(
      'Length and girth of the parcel are over the limit',
      `${say.length(lengthPlusGirthMm)}; the most is ${say.length(mostMm)}.`
    ),
  'parcel-too-heavy': ({ massG, mostG }, say) =>
    put('The parcel is too heavy for the carrier', `${say.mass(massG)}; the most is ${say.mass(mostG)}.`),
  'parcel-billed-by-size': ({ massG, billedG }, say) =>
    put(
      'The carrier bills this parcel by its size',
      `It weighs ${say.mass(massG)} and is billed as ${say.mass(billedG)}. Pack it tighter.`
    ),
  'tool-wear-unknown': ({ toolName }) =>
    put(`Wear of ${toolName} is not in the cost`, 'Enter what it cost and how many holes it lasts.'),
  'sells-at-a-loss': ({ way, lossMinor }, say) =>
    put(`${way} loses ${say.money(lossMinor)} on each unit`, 'Ask more, or sell another way.')
}

const TOO_HIGH = {
  fee: 'The fees alone take all of the price.',
  margin: 'The margin alone takes all of the price.',
  'fee-and-margin': 'Fees and margin together take all of the price.',
  'postage-charged': 'The postage charged covers more than the cost.'
} as const

export const PRICING_PROBLEM_WORDS: Wording<
  Omit<PricingProblemCodes, 'out-of-range' | 'not-finite' | 'currency-unknown'>
> = {
  'no-price': ({ way, tooHigh, feePercent, marginPercent, mostMarginPercent }, say) =>
    put(
      way === undefined ? 'No price leaves this margin' : `${way}: no price leaves this margin`,
      `${TOO_HIGH[tooHigh]} Fees ${say.percent(feePercent)}, margin ${say.percent(marginPercent)}; the margin must stay below ${say.percent(mostMarginPercent)}.`
    ),
  'contribution-not-positive': ({ what, contributionMinor }, say) =>
    put(
      `${what} never pays for its fixed cost`,
      `Each unit brings ${say.money(contributionMinor)} towards it. Ask more, or lower the cost.`
    ),
  'currency-differs': ({ found, wanted }) =>
    put(`The bill is in ${found}, the price in ${wanted}`, 'Use one currency for the workshop.')
}
