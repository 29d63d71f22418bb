import type { SourceEntry } from '../source-entry'
import { benchCautionSources } from './cautions-bench'

/** Where the cautions come from: those of the bench, and those about lifting, the place, water, salts and food. */
export const cautionSources = {
  ...benchCautionSources,
  'safety-rnle': {
    body: 'NIOSH (Waters, Putz-Anderson, Garg)',
    title: 'Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) 94-110 (rev. 9/2021)',
    year: '1994/2021',
    where: 'RWL = LC x HM x VM x DM x AM x FM x CM',
    grade: 'published-in-part'
  },
  'safety-rwl51': {
    body: 'OSHA poultry eTool',
    title: 'NIOSH Lifting Recommendations',
    year: 'n.d.',
    where: '51 lb under ideal conditions',
    address: 'https://www.osha.gov/SLTC/etools/poultry/additional_material/niosh.html',
    grade: 'published'
  },
  'safety-hsefilter': {
    body: 'HSE (UK)',
    title: 'Simple manual handling risk filters',
    year: 'current page',
    where: 'lifting and lowering filter',
    address: 'https://www.hse.gov.uk/msd/manual-handling-risk-filters.htm',
    grade: 'published-in-part'
  },
  'safety-pasco': {
    body: 'City of Pasco, Washington',
    title: 'Municipal Code 9.140.030',
    year: 'Code 1970',
    where: 'objects on window sills above a street or sidewalk',
    grade: 'published'
  },
  'safety-deerfield': {
    body: 'Village of Deerfield, Illinois',
    title: 'Code of Ordinances 15-13 Articles on windows',
    year: '1970 amd.',
    where: 'ledge above 4 ft',
    grade: 'published'
  },
  'safety-cpsc5124': {
    body: 'US CPSC',
    title: 'Preventing Window Falls, Document #5124',
    year: 'n.d. (print code 000600)',
    where: 'whole sheet',
    grade: 'published'
  },
  'safety-cpsc2018': {
    body: 'US CPSC',
    title: 'National Window Safety Week release',
    year: '2018',
    where: 'safety tips',
    grade: 'published'
  },
  'safety-bucket': {
    body: 'US CPSC',
    title: 'Infants & Toddlers Can Drown in 5-Gallon Buckets, Document #5006',
    year: 'n.d.',
    where: 'whole sheet',
    address: 'https://webharvest.gov/peth04/20041016150643/http://www.cpsc.gov/cpscpub/pubs/5006.html',
    grade: 'published'
  },
  'safety-bucket89': {
    body: 'US CPSC',
    title: 'Large Buckets Are Drowning Hazards For Young Children',
    year: '1989',
    where: 'release',
    address: 'https://www.cpsc.gov/Newsroom/News-Releases/1989/Large-Buckets-Are-Drowning-Hazards-For-Young-Children',
    grade: 'published'
  },
  'safety-gfci': {
    body: 'Electrical Safety Foundation International',
    title: 'How to Use GFCIs',
    year: 'n.d.',
    where: 'locations: within 6 ft of sinks; indoor damp or wet areas',
    grade: 'published'
  },
  'safety-cano3': {
    body: 'New Jersey Department of Health',
    title: 'Hazardous Substance Fact Sheet: Calcium Nitrate',
    year: '2009, rev. 2016',
    where: 'hazard summary',
    grade: 'published'
  },
  'safety-kno3': {
    body: 'NIOSH / IPCS',
    title: 'International Chemical Safety Card 0184 potassium nitrate',
    year: 'n.d.',
    where: 'chemical dangers; short-term exposure',
    grade: 'published-in-part'
  },
  'safety-nsf61': {
    body: 'NSF/ANSI/CAN',
    title: '61 Drinking Water System Components - Health Effects',
    year: '2024',
    where: 'scope',
    grade: 'published-in-part'
  },
  'safety-nsf51': {
    body: 'ANSI/NSF',
    title: '51 Food Equipment Materials',
    year: '1997',
    where: 'title page',
    grade: 'published-in-part'
  },
  'safety-cfr177': {
    body: 'FDA / eCFR',
    title: '21 CFR Part 177 Indirect food additives: polymers',
    year: '2021 snapshot',
    where: 'Subpart B list; 177.1520 olefin polymers',
    address: 'https://www.ecfr.gov/cgi-bin/text-idx?mc=true&tpl=/ecfrbrowse/Title21/21cfr177_main_02.tpl',
    grade: 'published'
  },
  'safety-cpscpb': {
    body: 'US CPSC',
    title: 'CPSC Finds Lead Poisoning Hazard for Young Children in Imported Vinyl Miniblinds, release 96150',
    year: '1996',
    where: 'release',
    address: 'http://www.cpsc.gov/en/newsroom/news-releases/1996/httpwwwcpscgovcpscpubprerelprhtml9696150html/',
    grade: 'published'
  },
  'safety-eupb': {
    body: 'European Commission',
    title: 'Regulation (EU) 2023/923 (REACH Annex XVII entry 63, lead in PVC)',
    year: '2023',
    where: 'recital 1; 0.1 % w/w limit, recovered-PVC derogations',
    grade: 'published-in-part'
  },
  'safety-still-tank': {
    body: 'University of Hawaii CTAHR',
    title: 'A Suspended Net-Pot, Non-Circulating Hydroponic Method..., VC-1',
    year: '2010',
    where: 'abstract: covered tank, one initial filling',
    grade: 'published'
  },
  'safety-mosq': {
    body: 'Public-health leaflet for Rhode Island (issuer not shown in the copy)',
    title: 'Help Control Mosquito Breeding Grounds and Stop Disease',
    year: 'n.d.',
    where: 'standing water',
    grade: 'published'
  },
  'safety-mosq2': {
    body: 'City of Rockville, Maryland',
    title: 'Fight the Bite: eliminating mosquitoes begins at home',
    year: 'n.d.',
    where: 'tips',
    grade: 'published'
  }
} as const satisfies Record<string, SourceEntry>
