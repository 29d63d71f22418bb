const UNITS = 'mm|in|ft|L|mL|US gal|US fl oz|kg|g|lb|oz|h|min|s|d|%|rpm|°C|°F|mS/cm'
const FIGURE_AND_UNIT = new RegExp(`(\\d) (?=(?:${UNITS})(?![\\w/]))`, 'g')
const WHOLE_AND_FRACTION = /(\d) (?=\d+\/\d+)/g

/** A figure keeps its unit, and a whole number its fraction, on one line: the space between them does not break. */
export const unbroken = (words: string): string =>
  words
    .replace(FIGURE_AND_UNIT, '$1\u00a0')
    .replace(WHOLE_AND_FRACTION, '$1\u00a0')
    .replace(/Ø (?=\d)/g, 'Ø\u00a0')
