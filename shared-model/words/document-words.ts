import type { CropsProblemCodes } from '../crops'
import type { DesignProblemCodes } from '../design'
import type { RangeProblemCodes } from '../outcome'
import type { PartsProblemCodes } from '../parts'
import type { ProfileProblemCodes } from '../profile'
import type { UnitsProblemCodes } from '../units'
import { fieldPlace } from './field-name'
import type { Say } from './say'
import { counted, put, spaced, type Wording } from './wording'

export const RANGE_WORDS: Wording<RangeProblemCodes> = {
  'out-of-range': ({ what, value, least, most }, say) =>
    put(`${capital(fieldPlace(what))} is out of range`, within(what, value, least, most, say)),
  'not-finite': ({ what }) => put(`${capital(fieldPlace(what))} is not a number`, 'Enter a number.')
}

export const UNITS_WORDS: Wording<UnitsProblemCodes> = {
  'entry-empty': () => put('Nothing was typed', 'Enter a figure.'),
  'entry-unreadable': ({ text }) => put(`“${text}” cannot be read`, 'Type a figure such as 190, 19 cm or 7 1/2 in.'),
  'entry-two-readings': ({ text, first, second }) =>
    put(`“${text}” can be read in two ways`, `Type ${first} or ${second}.`),
  'entry-wrong-mark': ({ text, mark }) =>
    put(`“${text}” has another decimal mark`, `The decimal mark here is “${mark}”.`),
  'entry-fraction-needs-inches': ({ text }) =>
    put(`“${text}” is a fraction without a unit`, 'Add the inch mark, or type a decimal.'),
  'entry-zero-denominator': ({ text }) => put(`“${text}” divides by nothing`),
  'entry-negative': ({ text }) => put(`“${text}” is below nothing`, 'Enter a figure that is not negative.'),
  'entry-outside': ({ text, least, most }, say) =>
    put(`“${text}” is out of range`, `It must be ${say.number(least)} to ${say.number(most)}.`),
  'length-outside': ({ text, leastMm, mostMm }, say) =>
    put(`“${text}” is out of range`, `It must be ${say.fine(leastMm)} to ${say.fine(mostMm)}.`),
  'money-too-fine': ({ text, currency, digits }) =>
    put(`“${text}” is finer than ${currency} goes`, `Use at most ${counted(digits, 'decimal')}.`),
  'currency-unknown': ({ currency }) => put(`The currency ${currency} is not known`, 'Use its three-letter code.')
}

const bounds =
  (what: string): Wording<PartsProblemCodes>['cup-wall-too-thick'] =>
  ({ valueMm, leastMm, mostMm }, say) =>
    put(`${what}`, `It is ${say.fine(valueMm)}; it must be ${say.fine(leastMm)} to ${say.fine(mostMm)}.`)

export const PROFILE_WORDS: Wording<ProfileProblemCodes> = {
  'profile-size-outside': ({ size, valueMm, leastMm, mostMm }, say) =>
    put(
      `The profile's ${size} cannot be`,
      `${say.fine(valueMm)}; it must be ${say.fine(leastMm)} to ${say.fine(mostMm)}.`
    ),
  'profile-not-round': bounds('A round pipe is as high as it is wide'),
  'wall-outside': ({ wall, valueMm, leastMm, mostMm }, say) =>
    put(
      `The profile's ${wall} wall cannot be`,
      `${say.fine(valueMm)}; it must be ${say.fine(leastMm)} to ${say.fine(mostMm)}.`
    ),
  'corner-radius-outside': bounds('The corner radius cannot be'),
  'outside-tolerance-outside': bounds('The tolerance of the outside size cannot be'),
  'hole-outside-face': bounds('The hole does not lie on the face'),
  'level-outside-bore': bounds('The level lies outside the bore'),
  'wet-area-outside-bore': ({ valueMm2, leastMm2, mostMm2 }, say) =>
    put(
      'The wetted area lies outside the bore',
      `${say.number(valueMm2, 0)} mm²; ${say.number(leastMm2, 0)} to ${say.number(mostMm2, 0)} mm².`
    )
}

export const PARTS_WORDS: Wording<PartsProblemCodes> = {
  'part-size-outside': ({ size, valueMm, leastMm, mostMm }, say) =>
    put(
      `${capital(size)} of a part cannot be`,
      `${say.fine(valueMm)}; it must be ${say.fine(leastMm)} to ${say.fine(mostMm)}.`
    ),
  'part-share-outside': ({ share, value, least, most }, say) =>
    put(
      `${capital(share)} of a part cannot be`,
      `${say.number(value)}; it must be ${say.number(least)} to ${say.number(most)}.`
    ),
  'part-mass-outside': ({ valueG, leastG, mostG }, say) =>
    put('The mass of a part cannot be', `${say.mass(valueG)}; it must be ${say.mass(leastG)} to ${say.mass(mostG)}.`),
  'cup-bottom-wider-than-body': bounds("The cup's bottom is wider than its body"),
  'cup-body-wider-than-rim': bounds("The cup's body is wider than its rim"),
  'cup-wall-too-thick': bounds("The cup's wall leaves no inside"),
  'cup-rim-higher-than-cup': bounds("The cup's rim is higher than the cup"),
  'riser-opened-outside-cup': bounds('The riser is opened outside its cup'),
  'collar-hole-outside-ring': bounds("The collar's hole does not lie inside the ring")
}

export const CROPS_WORDS: Wording<CropsProblemCodes> = {
  'crop-figure-outside': ({ figure, value, least, most }, say) =>
    put(
      `${capital(figure)} of a crop cannot be`,
      `${say.number(value)}; it must be ${say.number(least)} to ${say.number(most)}.`
    )
}

export const DESIGN_WORDS: Wording<DesignProblemCodes> = {
  'document-too-large': ({ bytes, mostBytes }, say) =>
    put(
      'The file is too large',
      `${say.number(bytes / 1_048_576, 1)} MiB; at most ${say.number(mostBytes / 1_048_576, 0)} MiB.`
    ),
  'document-not-json': ({ detail }) => put('The file is not a document of this program', detail),
  'document-too-deep': ({ mostDepth }) => put('The file is nested too deep', `At most ${mostDepth} levels are read.`),
  'document-too-many-values': ({ most }) => put('The file holds too many values', `At most ${most} are read.`),
  'schema-newer': ({ found, known }) =>
    put(
      'The file comes from a newer version of the program',
      `It has schema ${found}; this version knows up to ${known}. It is not written over: what is saved is a copy.`
    ),
  'schema-unknown': ({ found, known }) =>
    put('The file does not say what it is', `Its schema is ${found}; expected 1 to ${known}.`),
  'field-missing': ({ field, wanted, ...limits }, say) =>
    put(`${place(field)} is missing`, `Expected: ${wanted}${from(limits, say)}.`),
  'field-wrong-type': ({ field, wanted, got, ...limits }, say) =>
    put(
      field === '' ? 'The document is not one' : `${place(field)} is not what it should be`,
      `Expected ${wanted}${from(limits, say)}, found ${got}.`
    ),
  'field-not-finite': ({ field, least, most }, say) =>
    put(`${place(field)} is not a number`, `It must be ${say.number(least)} to ${say.number(most)}.`),
  'field-out-of-range': ({ field, value, least, most }, say) =>
    put(`${place(field)} is out of range`, within(field, value, least, most, say)),
  'field-not-whole': ({ field, value, least, most }, say) =>
    put(
      `${place(field)} must be a whole number`,
      `It is ${say.number(value, 4)}; whole numbers from ${say.number(least)} to ${say.number(most)} will do.`
    ),
  'field-not-one-of': ({ field, value, allowed }) =>
    put(`${place(field)} is none of the choices`, `Found ${value}; allowed: ${allowed}.`),
  'field-malformed': ({ field, value, wanted }) =>
    put(`${place(field)} is not written as it should be`, `Found “${value}”; wanted: ${wanted}.`),
  'text-too-long': ({ field, length, most }) =>
    put(`${place(field)} is too long`, `${length} characters; at most ${most}.`),
  'count-out-of-range': ({ field, count, least, most }) =>
    put(
      `${place(field)} holds ${count < least ? 'too few' : 'too many'}`,
      `${count}; from ${least} to ${most} are allowed.`
    ),
  'id-twice': ({ field, id }) =>
    put(`${id} stands twice`, `In ${fieldPlace(field)}: each must have a name of its own.`),
  'reference-dangling': ({ field, id, wanted }) =>
    put(`${place(field)} names a ${wanted} that is not there`, `There is no ${id}.`),
  'sizes-disagree': ({ field, value, least, most }, say) =>
    put(`${place(field)} contradicts another size`, within(field, value, least, most, say)),
  'edit-read-only': ({ document }) =>
    put(
      `This ${document} is open for reading only`,
      `A newer version of the program wrote it. Save a copy, and the copy can be changed.`
    ),
  'edit-not-found': ({ what, id }) => put(`There is no ${spaced(what)} ${id}`),
  'edit-in-use': ({ what, id, uses }) =>
    put(`${capital(what)} ${id} is in use`, `By ${counted(uses, 'site')}; change those first.`),
  'edit-no-room': ({ wanted, room }, say) =>
    put('There is not enough room', `${say.length(wanted)} is needed, there is ${say.length(room)}.`)
}

const place = (field: string): string => capital(fieldPlace(field))

/** A value and both its bounds, lengths in the reader's unit, amounts in money. */
const within = (field: string, value: number, least: number, most: number, say: Say): string => {
  const plain = (figure: number) => say.number(figure)
  const said = field.endsWith('Mm') ? say.fine : field.endsWith('Minor') ? say.money : plain
  return `It is ${said(value)}; it must be ${said(least)} to ${said(most)}.`
}

/** Both bounds of a number that is wanted; nothing where none are known. */
const from = ({ least, most }: { readonly least?: number; readonly most?: number }, say: Say): string =>
  least === undefined || most === undefined ? '' : ` from ${say.number(least)} to ${say.number(most)}`

const capital = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1)
