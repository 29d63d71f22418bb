import type { SourceEntry } from '../source-entry'

/** Sources of material properties, water and joints. */
export const materialsSources = {
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
  'solvent-cement-method': {
    body: 'ASTM',
    title: 'ASTM D2855 (PVC solvent-cemented joints): scope; two-step method',
    year: '1996 R2002/2010, 2015',
    where: 'as titled',
    grade: 'published'
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
  'steel-beam-example': {
    body: 'copy of an engineering reference page',
    title:
      'Beam example expressions: (a) 5000 mm, 6 N/mm, 200 GPa, 81 960 000 mm4; (b) 100 in., 100 lb/in, 29e6 psi, 285 in4',
    year: 'n.d.',
    where: 'as titled',
    grade: 'published-in-part'
  },
  'water-density-cipm': {
    body: 'BIPM, Metrologia',
    title: 'Recommended table for the density of water between 0 C and 40 C (Tanaka and others)',
    year: '2001',
    where: 'Metrologia 38:301, equation 1; spot values in the CRC Handbook',
    grade: 'published'
  }
} as const satisfies Record<string, SourceEntry>
