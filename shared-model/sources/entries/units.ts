import type { SourceEntry } from '../source-entry'

/** Sources of units, money and what has none. */
export const unitsSources = {
  'nist-handbook-44': {
    body: 'NIST',
    title: 'NIST Handbook 44 Appendix C, General tables of units of measurement',
    year: '2004 copy',
    where: 'Appendix C',
    grade: 'published',
    address: 'https://www.webharvest.gov/peth04/20041031170158/http://ts.nist.gov/ts/htdocs/230/235/appxc/appxc.htm'
  },
  'iso-4217': {
    body: 'ISO',
    title: 'ISO 4217 Codes for the representation of currencies, list one, open data copy',
    year: '2025 as known',
    where: 'list one, minor unit column',
    grade: 'published-in-part'
  },
  'decimal-arithmetic': {
    body: 'General Decimal Arithmetic',
    title: 'General Decimal Arithmetic Specification 1.70, rounding modes; FAQ text (mirror)',
    year: '2009',
    where: 'rounding modes half-up, half-even, up, down',
    grade: 'published'
  },
  'largest-remainder': {
    body: 'OpenStax / Rice University',
    title: 'Contemporary Mathematics, apportionment by largest remainder',
    year: '2023',
    where: 'sections 11.4 and 11.5',
    grade: 'published'
  },
  memory: {
    body: 'none',
    title: 'From memory, no source read: measure it before the sheet is printed',
    year: 'n.d.',
    where: 'none',
    grade: 'from-memory'
  },
  practice: {
    body: 'none',
    title: 'Common practice of the trade, no source',
    year: 'n.d.',
    where: 'none',
    grade: 'common-practice'
  }
} as const satisfies Record<string, SourceEntry>
