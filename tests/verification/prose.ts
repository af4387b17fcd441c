/** What the sources have wrong, or say in two ways, and what the program does about it. */
export const ERRATA: readonly string[] = [
  'Preload of A2-70, a second supplier’s table, given there as guidance: M6 at μ 0.1 is printed as 6.85 kN; the formula gives 7.35 kN. The print follows from the older torsion term, factor 2 (elastic section) in place of 3/2 (plastic section), which makes it 6.86 kN. Left out of the checks.',
  'Engagement of M10 10.9 in aluminium (doi 10.1201/9781482273786-99): 9.968 mm stands there as the least major diameter, but is the greatest of 6g. The check above repeats the example with its own figure; with the least one, 9.732 mm, the same equation asks 24.9 mm, not 21.6 mm.',
  'A reprint of ISO 898-1 gives the breaking load of M4 10.9 as 91130 N: a slip for 9130 N.',
  'A table in circulation gives the clearance holes of M2.5 as 2.8, 3.0, 3.2 mm; ISO 273 has 2.7, 2.9, 3.1 mm.',
  'A print of the press-fit equation in circulation has +νi for the shaft. The sign is −νi: only so do equal materials reduce to the short form.',
  'Stress area: inch tables take D − 0.9743/n, metric ones d − 0.938194·P. The metric form would give the small inch sizes 1.7 to 2.1 % more, so both forms are kept. The printed 0.00604 in² of 4-40 is 0.12 % above its own formula.',
  'Proof stress of 8.8: 580 MPa up to 16 mm, 600 MPa only above; textbooks often print 600 alone.',
  'ISO 898-1 does not round its loads strictly to nearest: M6 5.8 breaks at 10 400 N (product 10 452), M8 4.8 is proved at 11 400 N (11 346), M6 8.8 at 11 600 N (11 658).',
  'VDI 2230, M8 × 1, 12.9, μ 0.12: 34.7 kN printed, 34.8 kN by the formula.',
  'Nut factor of zinc: 0.20 in Shigley, 0.295 in the Handbook of Bolts and Bolted Joints. The program uses neither: it works from frictions.',
  'Bearing diameter: one preload takes up to 6 % more torque when the head’s outer diameter stands for its bearing face.',
  'ISO 898-7 covers 8.8 and above. For 4.6 to 5.8 no published breaking torque is known, and none is shown.',
  'Two polygon articles: 10 corners lose 4.9 % of the diameter, 22 lose 1.0 %; one rounds them to 5 and 1.',
  'Few of the source values are from the standard itself: “reprint” is a third party’s print of its table, to be confirmed against the standard.',
];

/** Numbers of the model that nobody has published. */
export const WITHOUT_PUBLISHED_VALUE: readonly (readonly [what: string, state: string])[] = [
  [
    'bond factor η of the knurl in printed plastic',
    'estimate 0.85, a third of it when pressed or hammered in cold; a pull coupon of the own printer replaces it',
  ],
  ['bite factor kb', 'straight line from the intended bite to none; an estimate, no test known'],
  [
    'plug of walls and infill',
    'shear on the cylinder over the walls, infill by its share; no pull-out table with geometry was found to check it',
  ],
  [
    'splitting under the knurl’s wedge',
    'Lamé’s ring is published; the wedge of 45° and what a cold setting locks in are estimates',
  ],
  [
    'scatter of an untested set-up',
    'logarithmic deviation √(0.30² + 0.10²) with 4 degrees of freedom: chosen, so that 19 of 20 hold 0.51 of the median',
  ],
  ['knurled length, where not measured', 'L − 0.28 · Dk, from the inserts at hand'],
  ['melt in the bore', 'half of the ring between knurl and bore, all of it below the insert'],
  ['window of the bore', 'pilot less 0.10 mm to 0.7 of the bite'],
  [
    'hole error of an unknown printer',
    'offset −0.28 ± 0.10 mm judged; only the slope has a published fit, of one printer',
  ],
  ['strength left in the warmth', 'straight line to softening and remembered ratios'],
  ['creep of PLA, PETG, ABS, ASA, PA12, TPU', 'remembered ratios; only PC and conditioned PA66 were read'],
  [
    'friction of steel in brass and on printed plastic',
    'ranges within the classes of VDI 2230 and read friction tables',
  ],
  [
    'pull-out, torque-out and jack-out of a heat-set insert in a printed part',
    'no table with geometry, number and scatter was found',
  ],
];
