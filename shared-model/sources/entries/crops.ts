import type { SourceEntry } from '../source-entry'

/** Sources of spacing, conductivity, acidity and water use by crop. */
export const cropsSources = {
  'spacing-fao': {
    body: 'FAO',
    title: 'Fisheries and Aquaculture Technical Paper 589, Small-scale aquaponic food production (as reprinted)',
    year: '2014',
    where: 'Appendix 1, vegetable production guidelines',
    grade: 'published-in-part'
  },
  'spacing-hobby': {
    body: 'CRC Press',
    title: 'Hobby Hydroponics, spacing of lettuce in hobby units',
    year: 'n.d.',
    where: 'chapter 3',
    grade: 'published-in-part'
  },
  'spacing-deep-flow': {
    body: 'International Journal of Agricultural Technology',
    title: 'Green Oak lettuce and pak choi in deep flow: 10 x 12 cm gave the highest yield per area',
    year: '2020',
    where: '16:1063',
    grade: 'published'
  },
  'spacing-chard': {
    body: 'African Journal of Agricultural Research',
    title: 'Swiss chard in gravel film: 40 plants/m2 best (by way of a 2018 review)',
    year: '2013',
    where: '8:936',
    grade: 'published-in-part'
  },
  'spacing-mint': {
    body: 'Mentha density study, Finland',
    title: 'Field peppermint: rows 50 cm apart, 10, 20 or 30 cm in the row, no steady yield difference',
    year: 'n.d.',
    where: 'abstract',
    grade: 'published-in-part'
  },
  'mint-roots': {
    body: 'Sustainability',
    title: 'Spearmint on rafts and in grow pipes: root bulk and shoot height',
    year: '2022',
    where: '14(1):305, abstract',
    grade: 'published'
  },
  'ec-table': {
    body: 'Oklahoma State University Extension',
    title: 'HLA-6722, EC and pH by crop (as reprinted in a 2018 review, Table 1)',
    year: '2018',
    where: 'Table 2',
    grade: 'published-in-part'
  },
  'ec-most-crops': {
    body: 'Review of hydroponics as an advanced technique for vegetable production',
    title: 'Most crops: EC 1.5-2.5, pH 5.5-6.5',
    year: '2018',
    where: 'section on nutrient solution',
    grade: 'published-in-part'
  },
  'ec-herbs-trial': {
    body: 'Agronomy',
    title: 'Cilantro, dill, parsley: growth did not depend on EC from 0.5 to 4.0 dS/m',
    year: '2019',
    where: '9(7):389',
    grade: 'published'
  },
  'lettuce-use': {
    body: 'derived',
    title: 'Lettuce in still solution: 3 to 6 L over 35 to 45 days',
    year: 'n.d.',
    where: 'derived from volumes and crop times of still systems',
    grade: 'published-in-part'
  },
  'still-trial': {
    body: 'Journal of Vegetable Science',
    title: 'Growing lettuce in non-aerated, non-circulated hydroponic systems',
    year: '2005',
    where: 'abstract: 220 g a head under a fixed cover',
    grade: 'published'
  },
  'still-bottle': {
    body: 'Acta Horticulturae',
    title: 'Three non-circulating hydroponic methods for growing lettuce',
    year: '2009',
    where: '843:65-72, abstract: 4 L a plant',
    grade: 'published-in-part'
  },
  'bucket-volume': {
    body: 'University of Florida IFAS',
    title: 'Floating bucket garden: 2.5 gal for three or four plants',
    year: '2017',
    where: '0.63-0.83 gal a plant, calculated',
    grade: 'published-in-part'
  }
} as const satisfies Record<string, SourceEntry>
