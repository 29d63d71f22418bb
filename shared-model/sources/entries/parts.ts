import type { SourceEntry } from '../source-entry'

/** Sources of sizes of profiles, pipes, saws and foam; trade pages are described by their kind. */
export const partsSources = {
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
  'sheet-gauge': {
    body: 'reference page',
    title: 'Sheet metal gauge chart (steel, galvanized, aluminium thickness)',
    year: '2010',
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
  'eva-tile': {
    body: 'how-to site',
    title: 'EVA interlocking mats: tiles 2x2 to 4x4 ft, 3/8 to 3/4 in. thick, closed cell',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'saw-oversize': {
    body: 'how-to site',
    title: 'Hole saw sizing: nominal equals tooth outside diameter; hole often marginally larger',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  }
} as const satisfies Record<string, SourceEntry>
