import type { SourceEntry } from '../source-entry'

/** Sources of sections, materials, parts, units and water; trade pages are described by their kind. */
export const foundationSources = {
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
  'pvc-pipe-tolerance': {
    body: 'size-chart page',
    title: 'ASTM D1785 Table 1 (OD, OD tolerance, out-of-roundness), reprint',
    year: 'n.d.',
    where: 'Table 1 (OD',
    grade: 'published-in-part'
  },
  'sdr35-pipe': {
    body: 'how-to site',
    title:
      'SDR-35 pipe facts (4 in. OD 4.215, 6 in. OD 6.275, min wall range 0.12-0.437, lengths 14 and 20 ft, 1.03 lb/ft for 4 in.)',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'en1401-pipe': {
    body: 'pipe maker data page',
    title: 'Plain wall PVC-U pipe to EN 1401-1: OD, wall, kg/m for SN2/SN4/SN8',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'uk-waste-pipe': {
    body: 'merchant article',
    title: 'UK waste pipe nominal v. actual OD (push-fit and solvent weld)',
    year: '2020',
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
  'downspout-clauses': {
    body: 'contract clause library',
    title:
      'Downspout specification clauses (3105-H24, 0.024 +/- 0.002 in.; 0.032 in. formed aluminium; 0.034 in. zinc-coated steel; 1-1/2 in. telescoping joints)',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'downspout-sheet': {
    body: 'contractor article',
    title: 'Corrugated aluminium downspout thicknesses 0.016 / 0.019 / 0.024 in.',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'downspout-older': {
    body: 'contractor page',
    title:
      'Rectangular downspout and outlet sizes (1-3/4 x 2-3/4; outlet 1-1/2 x 2-1/2 area 3.75; 2x3 outlet 1-3/4 x 2-3/4 area 4.81)',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'en612-downpipe': {
    body: 'sheet maker data page',
    title: 'Standard rainwater downpipes to EN 612: round/square 80 and 100 mm, 0.65 mm sheet, kg/m, 2 and 3 m',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'uk-downpipe': {
    body: 'maker article',
    title: 'UK downpipe nominal sizes (50/65/68/80 mm round; 65x65 and 80x80 square)',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'post-sleeve': {
    body: 'how-to site',
    title: '4x4 PVC post sleeve: fits over 3.5 x 3.5 in. wood post, wall often about 1/8 in.',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'fence-post-wall': {
    body: 'fence contractor article',
    title: 'Vinyl fence post wall: 0.140 in. recommended minimum',
    year: '2022',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'hole-saw-definitions': {
    body: 'ASME',
    title:
      'ASME B94.54-1999 (R2020) Specifications for hole saws, arbors and accessories: definitions of saw diameter, kerf, cutting depth',
    year: '1999 (R2020)',
    where: 'as titled',
    grade: 'published'
  },
  'hole-saw-listing': {
    body: 'distributor listing',
    title: 'Bi-metal hole saw listing, 1-1/4 in.: pilot 0.25 in., depth 1.875 in.',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'pe-pipe-modulus': {
    body: 'Plastics Pipe Institute',
    title: 'Handbook of Polyethylene Pipe, chapter 3 Appendix B, Table B.1.1 apparent elastic modulus at 73 F',
    year: '2nd ed. (2008)',
    where: 'Appendix B',
    grade: 'published'
  },
  'pvc-u-properties': {
    body: 'pipe maker data page',
    title:
      'PVC-U material properties (tensile modulus 3200 MPa, ring-bending modulus 50 yr 1200 MPa, SG 1.47, expansion 70e-6/C, yield strain 5.5 %)',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'pvc-12454-properties': {
    body: 'pipe property sheet',
    title:
      'Typical PVC 12454 pipe properties with ASTM test methods (SG 1.40 +/- 0.02, E 420 000 psi, flexural modulus 360 000 psi, tensile 7450 psi, CTE 2.9e-5/F, HDT 170 F, max service 140 F)',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'thermoplastics-properties': {
    body: 'engineering reference site',
    title: 'Thermoplastics - physical properties (ABS, PVC, CPVC, PE ...)',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'aluminium-3105': {
    body: 'sheet supplier data page (ASTM B209)',
    title: 'Aluminium 3105: density 0.0983 lb/in3, E 10.0e6 psi, CTE 12.1e-6/F (68-212 F); ASTM B209 strengths',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'aluminium-3105-modulus': {
    body: 'space materials database',
    title: 'AA3105-H12: SG 2.72, E 69.5 GPa, CTE 23.9e-6/C',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'sheet-gauge': {
    body: 'reference page',
    title: 'Sheet metal gauge chart (steel, galvanized, aluminium thickness)',
    year: '2010',
    where: 'as titled',
    grade: 'published-in-part'
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
  'frustum-solutions': {
    body: 'exam solution pages',
    title:
      'Frustum worked solutions (D 4 and 2, h 14 -> 102.667 with pi=22/7; radii 5 and 4, h 21 -> 1342 with pi=22/7; R 1, r 0.25, h 5 -> 6.5625 with pi=3)',
    year: '2018-2019',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'solvent-cement-method': {
    body: 'ASTM',
    title: 'ASTM D2855 (PVC solvent-cemented joints): scope; two-step method',
    year: '1996 R2002/2010, 2015',
    where: 'as titled',
    grade: 'published'
  },
  'eva-tile': {
    body: 'how-to site',
    title: 'EVA interlocking mats: tiles 2x2 to 4x4 ft, 3/8 to 3/4 in. thick, closed cell',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'eva-density': {
    body: 'blog',
    title: 'EVA tile density advice: at least 70 kg/m3 (4.4 lb/ft3)',
    year: '2023',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'trunking-page': {
    body: 'cable management catalogue',
    title:
      'PVC-U trunking technical page: about 5.25 mm expansion in a 3 m length for 25 C; cut with a fine-toothed saw',
    year: '2011/2016',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'nist-handbook-44': {
    body: 'NIST',
    title: 'NIST Handbook 44 Appendix C, General tables of units of measurement',
    year: '2004 copy',
    where: 'Appendix C',
    grade: 'published',
    address: 'https://www.webharvest.gov/peth04/20041031170158/http://ts.nist.gov/ts/htdocs/230/235/appxc/appxc.htm'
  },
  'saw-oversize': {
    body: 'how-to site',
    title: 'Hole saw sizing: nominal equals tooth outside diameter; hole often marginally larger',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'steel-beam-example': {
    body: 'copy of an engineering reference page',
    title:
      'Beam example expressions: (a) 5000 mm, 6 N/mm, 200 GPa, 81 960 000 mm4; (b) 100 in., 100 lb/in, 29e6 psi, 285 in4',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
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
  'water-density-cipm': {
    body: 'BIPM, Metrologia',
    title: 'Recommended table for the density of water between 0 C and 40 C (Tanaka and others)',
    year: '2001',
    where: 'Metrologia 38:301, equation 1; spot values in the CRC Handbook',
    grade: 'published'
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
