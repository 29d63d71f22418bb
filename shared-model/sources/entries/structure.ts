import type { SourceEntry } from '../source-entry'

/** Sources of sag, tipping, lifting and loads. */
export const structureSources = {
  'beam-formulas': {
    body: 'American Wood Council / AF&PA',
    title: 'Beam design formulas with shear and moment diagrams, Design Aid No. 6',
    year: '2005',
    where: 'Figure 1, simple beam with uniform load; overhanging beam with uniform load on the overhang',
    grade: 'published'
  },
  'pvc-support-spacing': {
    body: 'engineering reference site',
    title: 'Maximum spacing of hanger supports for PVC pipe by size, schedule and temperature',
    year: 'n.d.',
    where: 'Schedule 40, 60 F; sag derived for a simple span',
    grade: 'published-in-part'
  },
  'sag-limit-240': {
    body: 'International Code Council',
    title: 'International Building Code Table 1604.3; International Residential Code Table R301.7',
    year: '2012-2021',
    where: 'L/240; twice the length of a cantilever',
    grade: 'published'
  },
  'sag-gap-least': {
    body: 'growing practice',
    title: 'Sag takes the air gap at mid-span; 2 mm of it is not seen',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  },
  'tipping-angle': {
    body: 'statics',
    title: 'Angle to tip: atan of the edge distance over the height of the mass centre',
    year: 'n.d.',
    where: 'worked example 1500 over 1000 mm, 56.3 degrees',
    grade: 'published-in-part'
  },
  'tip-least': {
    body: 'furniture tests on a slope',
    title: 'Things that stand free bear a slope of 10 degrees',
    year: 'n.d.',
    where: 'no source read',
    grade: 'from-memory'
  },
  'window-warming': {
    body: 'growing practice',
    title: 'A channel at a window warms by up to 25 C between a cold night and a sunny day',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  },
  'niosh-lifting': {
    body: 'NIOSH',
    title: 'Applications Manual for the Revised NIOSH Lifting Equation',
    year: '1994',
    where: 'DHHS (NIOSH) 94-110; grip and frequency factors',
    grade: 'published-in-part'
  },
  'carry-filled': {
    body: 'workshop practice',
    title: 'A channel over 24 in and 10 lb is never carried filled',
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  },
  'sill-no-published-limit': {
    body: 'search of standards and codes',
    title: 'No load rating of interior window sills was found; only the user can give one',
    year: '2026',
    where: 'not found',
    grade: 'common-practice'
  },
  'plant-mass-height': {
    body: 'growing practice',
    title: "A plant's mass centre at half its height",
    year: 'n.d.',
    where: 'no source',
    grade: 'common-practice'
  }
} as const satisfies Record<string, SourceEntry>
