import type { BenchFindingCodes, BenchProblemCodes } from '../bench'
import type { BillFindingCodes, BillProblemCodes } from '../bill'
import type { CuttingFindingCodes, CuttingProblemCodes } from '../cutting'
import type { RingsFindingCodes, RingsProblemCodes } from '../rings'
import { materialName } from './names'
import { counted, put, type Wording } from './wording'

type WithoutRange<Codes> = Omit<Codes, 'out-of-range' | 'not-finite'>

export const CUTTING_WORDS: Wording<CuttingFindingCodes> = {
  'piece-too-long': ({ mark, lengthMm, longestMm }, say) =>
    put(
      `No bar is long enough for piece ${mark}`,
      longestMm > 0
        ? `It is ${say.length(lengthMm)}; the longest bar gives ${say.length(longestMm)}. Shorten it, or add a longer bar to the workshop.`
        : `It is ${say.length(lengthMm)} and no bar of this profile is on offer. Add one to the workshop.`
    ),
  'piece-joined': ({ mark, lengthMm, longestMm, parts, partMm }, say) =>
    put(
      `Piece ${mark} is joined of ${counted(parts, 'part')}`,
      `It is ${say.length(lengthMm)}; the longest bar gives ${say.length(longestMm)}. Cut parts of up to ${say.length(partMm)} and join them with a coupling.`
    ),
  'bar-group-too-long': ({ group, lengthMm, longestMm }, say) =>
    put(
      `The pieces of ${group} do not fit one bar`,
      `Together ${say.length(lengthMm)}; the longest bar gives ${say.length(longestMm)}. They are cut from several.`
    ),
  'stock-runs-out': ({ pieces, lengthMm }, say) =>
    put(
      `The stock does not reach for ${counted(pieces, 'piece')}`,
      `The longest of them is ${say.length(lengthMm)}. Get more bars, or longer ones.`
    ),
  'pin-refused': ({ mark, why }) =>
    put(
      `Piece ${mark} cannot stay on the bar that it is pinned to`,
      why === 'no-room'
        ? 'There is no room for it there any more. It is cut from another bar; unpin it, or pin it to one with room.'
        : 'There is no such bar any more. It is cut from another one; unpin it, or pin it to a bar that there is.'
    ),
  'cut-otherwise': ({ mark, cutMm, wantedMm }, say) =>
    put(
      `Piece ${mark} is cut at another length than the design has now`,
      `It was cut at ${say.length(cutMm)}; the design says ${say.length(wantedMm)}. Give the channel the length that was cut, or mark the piece as spoiled.`
    ),
  'bars-compared-by-length': ({ unpriced }) =>
    put(
      'Bars are chosen by length, not by price',
      `${counted(unpriced, 'bar length')} of this profile has no price. Enter it to have the cheapest bars chosen.`
    ),
  'cut-plan-not-proven': ({ gapPercent }, say) =>
    put('The cut plan is good, but not proven best', `At most ${say.percent(gapPercent)} could be saved.`)
}

export const CUTTING_PROBLEM_WORDS: Wording<WithoutRange<CuttingProblemCodes>> = {
  'same-id-twice': ({ what, id }) => put(`Two ${what} share the name ${id}`, 'Give one of them another.')
}

export const RINGS_WORDS: Wording<RingsFindingCodes> = {
  'sheet-short': ({ name, material, thicknessMm, missing }, say) =>
    put(
      `No sheet for ${missing} × ${name}`,
      `Add ${materialName(material)} sheet of ${say.fine(thicknessMm)} to the workshop.`
    ),
  'sheet-too-small': ({ name, needsMm, largestMm }, say) =>
    put(
      `Every sheet is too small for ${name}`,
      `It needs ${say.length(needsMm)} with its margins; the largest sheet has ${say.length(largestMm)}.`
    ),
  'sheets-not-proven': ({ value, lowerBound }, say) =>
    put(
      'The sheets are enough, but not proven the cheapest',
      value > 0 ? `At most ${say.share(Math.max(0, 1 - lowerBound / value))} could be saved.` : ''
    )
}

export const RINGS_PROBLEM_WORDS: Wording<WithoutRange<RingsProblemCodes>> = {
  'sheet-id-twice': ({ id }) => put(`Two sheets or parts from sheet share the name ${id}`, 'Give one of them another.')
}

export const BENCH_WORDS: Wording<BenchFindingCodes> = {
  'wall-deeper-than-saw': ({ sawName, depthMm, needsMm }, say) =>
    put(
      `${sawName} does not cut through from one side`,
      `It cuts ${say.fine(depthMm)}; ${say.fine(needsMm)} is needed. Cut from both sides, or take a deeper saw.`
    ),
  'order-not-proven': ({ handlingS, lowerBoundS }, say) =>
    put(
      'The drilling order is good, but not proven best',
      `Tool changes take ${say.time(handlingS)}; no order takes less than ${say.time(lowerBoundS)}.`
    ),
  'speed-common-practice': ({ material, rpm }, say) =>
    put(
      `No published speed for ${materialName(material)}`,
      `Common practice: not above ${say.number(rpm, 0)} turns a minute, and slower as the saw grows.`
    )
}

export const BENCH_PROBLEM_WORDS: Wording<WithoutRange<BenchProblemCodes>> = {
  'saw-unknown': ({ sawId }) => put(`The saw ${sawId} is not known`, 'Choose another saw.'),
  'core-unknown': ({ needId, fromNeedId }) =>
    put(`${needId} is to come from the core of ${fromNeedId}, which is not cut`)
}

export const BILL_WORDS: Wording<BillFindingCodes> = {
  'price-missing': ({ name }) =>
    put(`No price for ${name}`, 'Enter what it costs: without it there is no cost and no price.'),
  'prices-none': ({ lines }) =>
    put(
      'The workshop has no prices yet',
      `${counted(lines, 'line')} of the bill could be priced. Enter prices to see the cost.`
    ),
  'price-old': ({ name, supplier, pricedOn, ageDays, mostDays, prices }) =>
    put(
      prices === 1 ? `The price of ${name} is old` : `${prices} prices are old`,
      `The oldest, ${name}${supplier === '' ? '' : ` from ${supplier}`}, is of ${pricedOn}, ${counted(ageDays, 'day')} ago; ask again after ${mostDays}.`
    ),
  'price-undated': ({ name, supplier, prices }) =>
    put(
      prices === 1 ? `The price of ${name} has no date` : `${prices} prices have no date`,
      prices === 1
        ? `Enter when ${supplier === '' ? 'it was asked' : `${supplier} gave it`}.`
        : `Enter when each was asked, ${name} first.`
    ),
  'cement-size-unlisted': ({ outsideMm, mostMm }, say) =>
    put(
      'Cement is reckoned for a smaller pipe',
      `The published list ends at ${say.fine(mostMm)}; this joint is ${say.fine(outsideMm)} across. Buy more than the bill says.`
    )
}

export const BILL_PROBLEM_WORDS: Wording<WithoutRange<BillProblemCodes>> = {
  'currency-mixed': ({ name, found, wanted }) =>
    put(
      `${name === '' ? 'A pack on offer' : name} is priced in ${found}, the workshop in ${wanted}`,
      `Nothing is priced until all prices are in one currency: enter it in ${wanted}, or take the offer away.`
    ),
  'packs-too-fine': ({ name, steps, most }) =>
    put(
      `The packs of ${name} are too fine to compare`,
      `${steps} steps, at most ${most}. Enter larger packs or a smaller batch.`
    )
}
