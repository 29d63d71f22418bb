import type { SourceEntry } from '../source-entry'

/** Sources of the printed sheet: paper, title block, drawing rules, file formats. */
export const sheetSources = {
  'paper-sizes': {
    body: 'ISO; ANSI/ASME',
    title: 'ISO 216 (A4, 210 by 297 mm); ASME Y14.1 (size A, 8.5 by 11 in)',
    year: '2007; 2020',
    where: 'table of trimmed sizes',
    grade: 'from-memory'
  },
  'iso-7200': {
    body: 'ISO',
    title: 'ISO 7200, Data fields in title blocks and document headers',
    year: '2004',
    where: 'tables 1 to 3, the mandatory fields',
    grade: 'from-memory'
  },
  'iso-5455': {
    body: 'ISO',
    title: 'ISO 5455, Technical drawings: scales',
    year: '1979',
    where: 'recommended reductions 1:2, 1:5, 1:10 and their tens',
    grade: 'from-memory'
  },
  'iso-129-1': {
    body: 'ISO',
    title: 'ISO 129-1, Presentation of dimensions and tolerances: general principles',
    year: '2018',
    where: 'dimension and extension lines; running dimensioning from an origin',
    grade: 'from-memory'
  },
  'iso-32000-1': {
    body: 'ISO; Adobe Systems',
    title: 'ISO 32000-1 (PDF 1.7), Document management: portable document format',
    year: '2008',
    where: 'table 150, PrintScaling (PDF 1.6)',
    grade: 'from-memory'
  },
  'rfc-4180': {
    body: 'Internet Engineering Task Force',
    title: 'RFC 4180, Common format and MIME type for comma-separated values files',
    year: '2005',
    where: 'section 2',
    address: 'https://www.rfc-editor.org/rfc/rfc4180',
    grade: 'from-memory'
  },
  'owasp-csv-injection': {
    body: 'OWASP Foundation',
    title: 'CSV Injection',
    year: 'n.d.',
    where: 'list of leading characters',
    grade: 'from-memory'
  },
  'saddle-development': {
    body: 'elementary geometry',
    title: 'Two round cylinders whose axes cross at a right angle, the surface of one unrolled',
    year: 'n.d.',
    where: 'no published value; checked by cases worked by hand',
    grade: 'common-practice'
  }
} as const satisfies Readonly<Record<string, SourceEntry>>
