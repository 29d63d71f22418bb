import type { SourceEntry } from '../source-entry'

/** Sources of bores, levels and strength of sections. */
export const profileSources = {
  'pvc-pipe-average-bore': {
    body: 'Hydraulic Institute',
    title: 'Engineering Data Library, section 4.E Plastic PVC pipe, Table 4.E.4 (Schedule pipe per ASTM D1785)',
    year: '2024',
    where: 'section 4.E Plastic PVC pipe',
    grade: 'published'
  },
  'pvc-pipe-dimensions': {
    body: 'open-source fluids library (MIT)',
    title: 'Transcription of ASTM D1785 (Schedule 40, 80, 120), ASTM D2665 (DWV), ASTM D2241',
    year: '2026-06-22',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'pvc-pipe-weight': {
    body: 'engineering office reference page',
    title: 'PVC Pipe Data (OD, average ID, minimum wall, nominal weight per foot, max working pressure)',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'copper-downspout-sizes': {
    body: 'Copper Development Association',
    title: 'Copper in Architecture Handbook, 10.7 Downspouts, Table 10.7A Recommended sizes for downspouts',
    year: 'n.d.',
    where: 'Table 10.7A Recommended sizes for downspouts',
    grade: 'published',
    address: 'https://www.copper.org/applications/architecture/arch_dhb/arch-details/gutters_downspouts/downspouts.html'
  },
  'pipe-section-table': {
    body: 'R. L. Mott',
    title: 'Machine Elements in Mechanical Design, 4th ed., Table A16-6 properties of Schedule 40 pipe sections',
    year: '2004',
    where: 'Table A16-6 properties of Schedule 40 pipe sections',
    grade: 'published'
  },
  'tube-section-table': {
    body: 'tube mill data pages',
    title: 'Rectangular mechanical tubing section properties (area, lb/ft, I, Z, r)',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'circular-channel-geometry': {
    body: 'engineering data site',
    title: 'Circular channel geometry A/D2, T/D, P/D (after Chow 1959 and FHWA HDS-4)',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'circle-segment-table': {
    body: 'Encyclopaedia Britannica',
    title:
      'Encyclopaedia Britannica 11th ed., Hydraulics, section 110, table of segment of a circle (depth in radii v. waterway in r2)',
    year: '1910-11',
    where: 'section 110',
    grade: 'published'
  },
  'circle-segment-value': {
    body: 'open-source fluids library (MIT), after a published circular segment formula',
    title: 'Area of a partly filled circle, documentation: diameter 96, depth 22',
    year: '2026',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'beam-sections': {
    body: 'Common mechanics',
    title: 'Second moment and section modulus of built-up sections by parallel axes',
    year: 'n.d.',
    where: 'checked against pipe-section-table and tube-section-table',
    grade: 'published-in-part'
  },
  geometry: {
    body: 'Elementary geometry',
    title: 'Circle, segment, chord, cone frustum',
    year: 'n.d.',
    where: 'closed forms, checked against circle-segment-table and frustum-solutions',
    grade: 'published-in-part'
  }
} as const satisfies Record<string, SourceEntry>
