import type { SourceEntry } from '../source-entry'

/** Where the cautions about drilling, cutting, gluing and foam come from. */
export const benchCautionSources = {
  'safety-mica': {
    body: 'College fabrication studios',
    title: 'Drill Press: Tool Safety and Operation',
    year: 'n.d.',
    where: 'items 1-12',
    address: 'https://www.mica.edu/Academic_Services_and_Libraries/Fabrication_Studios/Wood_Shop/Drill_Press.html',
    grade: 'published'
  },
  'safety-umn': {
    body: 'University of Minnesota, School of Physics student shop',
    title: 'Session 2: Bench work, saws, drill press safety rules',
    year: 'n.d.',
    where: 'Drill Press rules 1-6',
    address: 'https://zzz.physics.umn.edu/student_shop/class2',
    grade: 'published'
  },
  'safety-handdrill': {
    body: 'University EHS sheet',
    title: 'Powered Hand Drill Safety',
    year: 'n.d.',
    where: 'pre-operation / operation / post-operation',
    grade: 'published'
  },
  'safety-osha3157': {
    body: 'OSHA',
    title: 'Guide for Protecting Workers from Woodworking Hazards (OSHA 3157)',
    year: '1999',
    where: 'hand and arm protection, as quoted',
    grade: 'published-in-part'
  },
  'safety-hseglove': {
    body: 'HSE (UK)',
    title: 'PM83 drilling machines / HSG129 engineering workshops (gloves and rotating spindles)',
    year: 'n.d.',
    where: 'PM83 para 29 as cited',
    grade: 'published-in-part'
  },
  'safety-osha133': {
    body: 'OSHA',
    title: '29 CFR 1910.133 Eye and face protection',
    year: 'current',
    where: '(a)(1)-(2)',
    grade: 'published-in-part'
  },
  'safety-lsu': {
    body: 'Louisiana State University, mechanical engineering shop',
    title: 'Drill Press Safety Rules',
    year: 'n.d.',
    where: 'rule list',
    address: 'https://collegium.lsu.edu/eng/mie/cuf/ammf/safetyrules/DrillPress.php',
    grade: 'published'
  },
  'safety-hsaw': {
    body: 'A cutting-tool maker (unnamed)',
    title: 'Hole saw speeds: do / do not list',
    year: 'n.d.',
    where: 'do / do not',
    grade: 'published-in-part'
  },
  'safety-wfw': {
    body: 'Veterans woodworking charity',
    title: 'Drill press safety',
    year: 'n.d.',
    where: 'items 6-15',
    grade: 'published-in-part'
  },
  'safety-osha212': {
    body: 'OSHA',
    title: 'Standard interpretation: point-of-operation guards for drill presses and lathes (29 CFR 1910.212(a)(1))',
    year: '1990',
    where: 'letter of 15 Oct 1990',
    address: 'https://www.osha.gov/laws-regs/standardinterpretations/1990-10-15',
    grade: 'published'
  },
  'safety-mitre': {
    body: 'School district career-technical shop',
    title: 'Power tool safety: mitre saw',
    year: 'n.d.',
    where: 'before / during operation',
    grade: 'published-in-part'
  },
  'safety-osha243': {
    body: 'OSHA',
    title: '29 CFR 1910.243 Guarding of portable powered tools',
    year: 'current',
    where: '(a)(1)(i), (a)(4)',
    address: 'https://www.osha.gov/laws-regs/regulations/standardnumber/1910/1910.243',
    grade: 'published'
  },
  'safety-osha3080': {
    body: 'Illinois Institute of Technology shop wiki, citing OSHA 3080',
    title: 'Hand Tools (after OSHA 3080 Hand and Power Tools)',
    year: '2002 (OSHA 3080 rev.)',
    where: 'knives, scissors and saws',
    address: 'https://wiki.ideashop.iit.edu/index.php?title=Hand_Tools',
    grade: 'published'
  },
  'safety-snips': {
    body: 'International Association of Drilling Contractors',
    title: 'Hand tool safety: clamps, snips, toolboxes',
    year: 'n.d.',
    where: 'snips',
    grade: 'published'
  },
  'safety-osha138': {
    body: 'OSHA / GPO',
    title: '29 CFR 1910.138 Hand protection',
    year: '2011 edition',
    where: '(a),(b)',
    address: 'http://www.gpo.gov/fdsys/pkg/CFR-2011-title29-vol5/xml/CFR-2011-title29-vol5-sec1910-138.xml',
    grade: 'published'
  },
  'safety-knife': {
    body: 'Builders exchange safety bulletin',
    title: 'Sharp cutting tool safety',
    year: '2017',
    where: '-',
    grade: 'published-in-part'
  },
  'safety-noise': {
    body: 'NIOSH',
    title: 'Understanding Noise Exposure Limits (NIOSH Science Blog; REL set 1998)',
    year: '2016',
    where: 'REL 85 dBA, 8-h TWA',
    grade: 'published-in-part'
  },
  'safety-pvcdust': {
    body: 'Solvent-cement SDS (maker unnamed) quoting OSHA 29 CFR 1910.1000',
    title: 'Component list (THF, MEK, acetone, cyclohexanone, PVC) and exposure limits',
    year: '2016',
    where: '15 mg/m3 total, 5 mg/m3 respirable',
    grade: 'published-in-part'
  },
  'safety-aldust': {
    body: 'NIOSH/OSHA PEL project',
    title: 'Aluminum (metal dust), 54 FR 2332 comments',
    year: '1989',
    where: '15 mg/m3 total retained',
    address: 'https://www.cdc.gov/niosh/pel88/7429-90C.html',
    grade: 'published'
  },
  'safety-f402': {
    body: 'ASTM',
    title:
      'F402 Standard Practice for Safe Handling of Solvent Cements, Primers, and Cleaners Used for Joining Thermoplastic Pipe and Fittings',
    year: '2005 (R2012)',
    where: 'abstract; 4.1-4.2',
    grade: 'published-in-part'
  },
  'safety-thf': {
    body: 'OSHA',
    title: 'Occupational Chemical Database: tetrahydrofuran',
    year: '2025 page',
    where: 'flash point 6 F, LEL 2 %, UEL 11.8 %, vapour density 2.5, NFPA fire 3',
    address: 'https://www.osha.gov/chemicaldata/107',
    grade: 'published'
  },
  'safety-silsds': {
    body: 'Retail silicone sealant safety data sheet (maker unnamed)',
    title: 'SDS for a one-part acetoxy-cure silicone',
    year: '2016',
    where: '6 and 7',
    grade: 'published'
  },
  'safety-acetic': {
    body: 'NIOSH/OSHA',
    title: 'Occupational Safety and Health Guideline for Acetic Acid',
    year: 'n.d.',
    where: 'appearance and odour (odour threshold 0.21-1.0 ppm)',
    grade: 'published'
  },
  'safety-foamcode': {
    body: 'Home-inspection journal on the International Residential Code',
    title: 'Use and Covering of Foam Plastic Materials (2006 IRC)',
    year: '2007',
    where: 'separation from interior',
    grade: 'published'
  }
} as const satisfies Record<string, SourceEntry>
