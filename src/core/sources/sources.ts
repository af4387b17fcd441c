/** How a source is known: opened and read, read in a third party's reprint, or remembered and to be confirmed. */
export type HowKnown = 'read' | 'reprint' | 'from-memory' | 'derived';

export interface Source {
  readonly title: string;
  readonly year?: number;
  readonly howKnown: HowKnown;
  /** What is taken from it, and any caution. */
  readonly note?: string;
}

/**
 * Every source that a row, a formula or a default may cite, by its id.
 * The standing of a number (published, common practice, estimate, measured) is kept apart from how its source is known.
 */
export const SOURCES = {
  'iso-68-1': {
    title: 'ISO 68-1, ISO general purpose screw threads, basic profile',
    howKnown: 'from-memory',
  },
  'iso-724': { title: 'ISO 724, ISO metric screw threads, basic dimensions', howKnown: 'reprint' },
  'iso-261': { title: 'ISO 261, ISO metric screw threads, general plan', howKnown: 'reprint' },
  'iso-965': {
    title: 'ISO 965-1, ISO metric screw threads, tolerances (6g, 6H)',
    howKnown: 'reprint',
    note: 'M8 external limits and D1 max remembered; D2 max = d2 + TD2 with TD2 read.',
  },
  'asme-b1.1': {
    title: 'ASME B1.1, Unified inch screw threads',
    howKnown: 'reprint',
    note: 'Basic sizes read in reprints; 2A and 2B limits remembered.',
  },
  'asme-b1.1-limits': {
    title: 'ASME B1.1, Unified inch screw threads, limits 2A and 2B',
    howKnown: 'from-memory',
  },
  'asme-b18.2.8': { title: 'ASME B18.2.8, Clearance holes for bolts, screws and studs', howKnown: 'reprint' },
  'iso-273': { title: 'ISO 273, Fasteners, clearance holes for bolts and screws', howKnown: 'reprint' },
  'iso-888': { title: 'ISO 888, Fasteners, nominal lengths', howKnown: 'from-memory' },
  'iso-4759': { title: 'ISO 4759-1, length tolerance js15', howKnown: 'reprint' },
  'iso-898-1': {
    title: 'ISO 898-1, Mechanical properties of bolts, screws and studs of carbon and alloy steel',
    howKnown: 'reprint',
  },
  'iso-898-7': {
    title: 'ISO 898-7, Torsional test and minimum torques for bolts and screws, 1 mm to 10 mm',
    year: 1992,
    howKnown: 'reprint',
    note: 'Formula read, table of torques remembered.',
  },
  'iso-3506-1': {
    title: 'ISO 3506-1, Mechanical properties of corrosion-resistant stainless steel fasteners',
    howKnown: 'reprint',
  },
  'iso-3506-1-classes': {
    title: 'ISO 3506-1, strengths of the property classes 50 and 80',
    howKnown: 'from-memory',
  },
  'iso-4762': { title: 'ISO 4762, Hexagon socket head cap screws', howKnown: 'reprint' },
  'iso-7380-1': { title: 'ISO 7380-1, Hexagon socket button head screws', howKnown: 'reprint' },
  'iso-10642': { title: 'ISO 10642, Hexagon socket countersunk head screws', howKnown: 'reprint' },
  'iso-7089': {
    title: 'ISO 7089, Plain washers, normal series',
    howKnown: 'reprint',
    note: 'M2.5 remembered.',
  },
  'iso-4032': { title: 'ISO 4032, Hexagon regular nuts (style 1)', howKnown: 'reprint' },
  'asme-b18.3': { title: 'ASME B18.3, Socket cap screws, inch series', howKnown: 'from-memory' },
  'asme-b18.21.1': { title: 'ASME B18.21.1, Washers, inch series', howKnown: 'from-memory' },
  'inch-screw-lengths': { title: 'Lengths of inch machine screws as commonly sold', howKnown: 'from-memory' },
  'iso-16047': { title: 'ISO 16047, Fasteners, torque/clamp force testing', howKnown: 'from-memory' },
  'iso-6789': {
    title: 'ISO 6789, Hand torque tools',
    howKnown: 'reprint',
    note: 'Read in a tool manual that cites it.',
  },
  'vdi-2230': {
    title: 'VDI 2230 Part 1, Systematic calculation of highly stressed bolted joints',
    year: 2003,
    howKnown: 'reprint',
    note: 'Torque and preload formulae remembered, checked on the reprinted tables; friction classes B to E remembered.',
  },
  'fed-std-h28-2': {
    title: 'FED-STD-H28/2, Screw-thread standards for federal services, unified inch threads',
    howKnown: 'from-memory',
    note: 'Stripping areas; they reproduce the strip-area table of Bickford within 0.01 %.',
  },
  bickford: {
    title: 'J. H. Bickford, Introduction to the Design and Behavior of Bolted Joints, 4th ed.',
    howKnown: 'reprint',
  },
  'machinery-handbook': { title: "Machinery's Handbook, 24th ed.", howKnown: 'reprint' },
  shigley: {
    title: "R. G. Budynas and J. K. Nisbett, Shigley's Mechanical Engineering Design, 9th ed.",
    howKnown: 'read',
  },
  'nsts-08307': { title: 'NSTS 08307, Criteria for preloaded bolts', howKnown: 'reprint' },
  'nasa-rp-1228': {
    title: 'R. T. Barrett, Fastener Design Manual, NASA RP-1228',
    year: 1990,
    howKnown: 'read',
  },
  'jcgm-100': {
    title: 'JCGM 100, Guide to the expression of uncertainty in measurement',
    year: 2008,
    howKnown: 'reprint',
  },
  'iso-13385-1': {
    title: 'ISO 13385-1, Callipers, design and metrological characteristics',
    year: 2019,
    howKnown: 'reprint',
  },
  'en-1990': {
    title: 'EN 1990, Eurocode: Basis of structural design, Annex D',
    year: 2002,
    howKnown: 'from-memory',
  },
  'gibson-ashby': {
    title: 'L. J. Gibson and M. F. Ashby, Cellular Solids (course 3.054 formula sheet)',
    howKnown: 'read',
  },
  'findley-iso-899': {
    title: 'ISO 899-1, Plastics, tensile creep; Findley power law',
    howKnown: 'from-memory',
  },
  'hole-metrology-note': {
    title: 'Post "metrology" in an open blog repository: holes 3 to 10 mm measured on one printer',
    howKnown: 'read',
    note: 'Measured less nominal = 0.2307·ln D − 0.6223 mm; never above −0.10 mm; one printer, one unnamed material.',
  },
  'polygon-hole-articles': {
    title: 'Two open articles on holes drawn as polygons (2011 and 2016)',
    howKnown: 'read',
    note: 'Inscribed circle D·cos(π/N), sides for a tolerance on the radius.',
  },
  'slicer-flow-note': { title: "An open slicer's manual, page on flow mathematics", howKnown: 'read' },
  'slicer-settings-note': {
    title: 'Another open slicer’s manual, page on quality and precision settings',
    howKnown: 'read',
    note: 'First-layer compensation a side and how it dies out over the layers.',
  },
  'flm-insert-study': {
    title:
      'Kastner, Troschitz, Vogel, Behnisch, Gude, Modler, Investigation of the Pull-Out Behaviour of Metal Threaded Inserts in Thermoplastic FLM Components, J. Manuf. Mater. Process. 7, 42, doi 10.3390/jmmp7010042',
    year: 2023,
    howKnown: 'read',
    note: 'Abstract: infill in the joining zone of 70 % or more, wall of 2.4 mm or more.',
  },
  'insert-data-sheet': {
    title: 'Heat-installed brass insert, inch and metric data sheets (hole, wall and length table)',
    howKnown: 'read',
    note: 'Wall 0.39 to 0.50 of the knurl diameter; hole tolerance +0.10/0.',
  },
  'insert-design-guide': {
    title: 'Insert design guidelines of an insert maker',
    howKnown: 'read',
    note: 'Flush to 0.13 mm proud; sub-flush is a jack-out condition; mating hole smaller than the insert face.',
  },
  'printed-materials': {
    title: 'Collected data of printed polymers (online materials library cards, test notes, data sheets)',
    howKnown: 'read',
    note: 'Each row of the material table names its own provenance.',
  },
  'brass-data': { title: 'Data sheets of free-machining brass, C36000 and CW614N', howKnown: 'read' },
  'friction-judgement': {
    title: 'Friction of steel screws in brass threads and on plastics',
    howKnown: 'derived',
    note: 'Ranges chosen within VDI 2230 classes and friction tables.',
  },
  'trade-practice': {
    title: 'Common practice of the trade',
    howKnown: 'read',
    note: 'Public build threads and hardware notes.',
  },
  'own-model': { title: 'Model of this program, explained in docs/method.md', howKnown: 'derived' },
  'your-tests': { title: 'Your own tests', howKnown: 'read' },
  'your-measurement': { title: 'Your own measurement', howKnown: 'read' },
  'iso-16269-6': {
    title: 'ISO 16269-6, Determination of statistical tolerance intervals',
    howKnown: 'from-memory',
  },
  'success-run': {
    title: 'Success run: binomial bound when none of n fails (CMH-17, MMPDS)',
    howKnown: 'from-memory',
  },
  'nist-handbook': {
    title: 'NIST/SEMATECH e-Handbook of Statistical Methods',
    howKnown: 'from-memory',
  },
  'nist-sp-811': {
    title: 'NIST SP 811, Guide for the Use of the International System of Units, appendix B',
    howKnown: 'from-memory',
    note: 'Inch, pound and standard gravity are exact by definition.',
  },
  'welch-1947': { title: 'B. L. Welch, Biometrika 34 (1947) 28–35', howKnown: 'from-memory' },
  'fieller-1954': {
    title: 'E. C. Fieller, J. R. Statist. Soc. B 16 (1954) 175–185',
    howKnown: 'from-memory',
  },
  'grubbs-1969': { title: 'F. E. Grubbs, Technometrics 11 (1969) 1–21', howKnown: 'from-memory' },
  'vangel-1996': {
    title: 'M. G. Vangel, The American Statistician 50 (1996) 21–26',
    howKnown: 'from-memory',
  },
  'blom-1958': {
    title: 'G. Blom, Statistical Estimates and Transformed Beta-Variables',
    year: 1958,
    howKnown: 'from-memory',
  },
  elasticity: {
    title: 'Closed forms of linear elasticity (thick cylinder of Lamé, coaxial shear)',
    howKnown: 'read',
    note: 'Lamé as Shigley 9th ed. Eq. 3-56.',
  },
  'von-mises': { title: 'Distortion-energy criterion, shear = 0.577 × tension', howKnown: 'read' },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof SOURCES;
