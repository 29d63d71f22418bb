import type { SourceEntry } from '../source-entry'

/** Sources of cost, price, tax, learning and parcels. */
export const pricingSources = {
  'overhead-by-hour': {
    body: 'Saylor Academy edition (open text)',
    title: 'Managerial Accounting',
    year: '2012',
    where: 'section 2.3',
    grade: 'published'
  },
  'job-cost': {
    body: 'OpenStax / Rice University',
    title: 'Principles of Accounting vol. 2',
    year: '2019',
    where: 'section 6.1',
    grade: 'published'
  },
  'markup-margin': {
    body: 'OpenStax / Rice University',
    title: 'Principles of Marketing',
    year: '2023',
    where: 'section 18.3',
    grade: 'published'
  },
  'markup-price': {
    body: 'OpenStax / Rice University',
    title: 'Contemporary Mathematics',
    year: '2023',
    where: 'section 6.2',
    grade: 'published'
  },
  'target-cost': {
    body: 'Saylor Academy edition (open text)',
    title: 'Managerial Accounting',
    year: '2012',
    where: 'section 7.7',
    grade: 'published'
  },
  'break-even': {
    body: 'OpenStax / Rice University',
    title: 'Principles of Accounting vol. 2; Principles of Marketing; Managerial Accounting (Saylor Academy edition)',
    year: '2019',
    where: 'sections 3.1 and 3.2; section 12.4; section 6.1',
    grade: 'published'
  },
  'price-after-fees': {
    body: 'Math Central, University of Regina',
    title: 'Answer to a question on margin after commission: S = C / (1 - M - E)',
    year: '2007',
    where: 'whole answer; postage and the fee on tax are added here by the same balance',
    grade: 'published-in-part'
  },
  'sales-tax': {
    body: 'OpenStax / Rice University',
    title: 'Contemporary Mathematics; Principles of Accounting vol. 1',
    year: '2023',
    where: 'section 6.2; section 12.1',
    grade: 'published'
  },
  'tax-inside': {
    body: 'UK tax authority, reproduced under its Crown copyright notice',
    title: 'Fractions of value-added tax inside a gross amount',
    year: 'n.d.',
    where: 'table of fractions',
    grade: 'published'
  },
  'learning-average': {
    body: 'accountancy textbook',
    title: 'Learning curve, cumulative average model',
    year: 'n.d.',
    where: 'chapter 15, p. 324',
    grade: 'published'
  },
  'learning-unit': {
    body: 'Air Force Institute of Technology authors',
    title: 'Learning-curve reference package, vignette and manual',
    year: '2018',
    where: 'equations 1 to 8',
    grade: 'published'
  },
  'tool-wear': {
    body: 'OpenStax / Rice University',
    title: 'Principles of Accounting vol. 1, units-of-production depreciation',
    year: '2019',
    where: 'section 11.3',
    grade: 'published'
  },
  'yield-percent': {
    body: 'college course notes',
    title: 'MTH 81, Applying Yield Percent',
    year: 'n.d.',
    where: 'chapter 8',
    grade: 'published'
  },
  'length-plus-girth': {
    body: 'national postal service',
    title: 'Quick Service Guide 201e (archived 6 Jun 2016), from Domestic Mail Manual 201.7.0',
    year: '2016',
    where: 'length plus girth',
    grade: 'published'
  },
  'billed-parcel-weight': {
    body: 'national postal service',
    title: 'Domestic Mail Manual 123.1.4 (14 May 2007); Postal Bulletin 22509 (divisor 166)',
    year: '2007 / 2018',
    where: 'dimensional weight',
    grade: 'published'
  }
} as const satisfies Record<string, SourceEntry>
