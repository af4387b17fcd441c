import type { Situation } from '../../src/core/pull-out/situation.ts';
import { given, situationWith } from './joints.ts';

/** Round strengths that nobody could mistake for one another, MPa. */
const STRENGTHS = { knurlShear: 25.4, printedShear: 13.7, alongAxis: 29, hoop: 43, compressive: 57 };

const SYMBOLS = { knurlShear: 'τ', printedShear: 'τ_p', alongAxis: 'σ_a', hoop: 'σ_h', compressive: 'σ_c' };

/** A situation whose every number is set by the test; lengths mm, stresses MPa. */
export interface Numbers {
  readonly knurl?: number;
  readonly pilot?: number;
  readonly knurled?: number;
  readonly bore?: number;
  readonly wall?: number;
  readonly depth?: number;
  readonly floor?: number;
  readonly bond?: number;
  readonly biteFactor?: number;
  readonly strengths?: Partial<typeof STRENGTHS>;
  readonly density?: number;
  readonly pattern?: string;
  readonly topSkin?: number;
  readonly boss?: number;
  readonly setting?: Situation['setting'];
  readonly clearanceHole?: number;
}

/** A situation that went through the door, its derived numbers replaced by those of a hand calculation. */
export function situationOfNumbers(numbers: Numbers = {}): Situation {
  const { knurl = 5, knurled = 3.6, bore = 4.3 } = numbers;
  const passed = situationWith(
    {
      setting: numbers.setting ?? 'heat-set',
      host: {
        infill: { pattern: numbers.pattern ?? 'grid', density_percent: 100 * (numbers.density ?? 0.37) },
        topSkin_mm: numbers.topSkin ?? 0.9,
        ...(numbers.boss === undefined ? {} : { bossDiameter_mm: numbers.boss }),
      },
      clamped: { clearanceHole_mm: numbers.clearanceHole ?? 3.4 },
    },
    {
      knurlDiameter_mm: [knurl],
      pilotDiameter_mm: [numbers.pilot ?? bore - 0.05],
      knurledLength_mm: [knurled],
      length_mm: [knurled + 1.4],
    },
  );
  const stresses = { ...STRENGTHS, ...numbers.strengths };
  const stress = (key: keyof typeof STRENGTHS) => given(SYMBOLS[key], stresses[key], 'MPa');
  const set = (symbol: string, value: number | undefined, unit: 'mm' | '-', otherwise: Situation['wall']) =>
    value === undefined ? otherwise : given(symbol, value, unit);
  return {
    ...passed,
    bore: given('D_t', bore, 'mm'),
    bite: given('z', (knurl - bore) / 2, 'mm'),
    wall: set('t', numbers.wall, 'mm', passed.wall),
    depth: set('T', numbers.depth, 'mm', passed.depth),
    floor: set('f', numbers.floor, 'mm', passed.floor),
    bond: { ...passed.bond, factor: set('η', numbers.bond, '-', passed.bond.factor) },
    biteFactor: given('k_b', numbers.biteFactor ?? 1, '-'),
    strengths: {
      knurlShear: stress('knurlShear'),
      printedShear: stress('printedShear'),
      alongAxis: stress('alongAxis'),
      hoop: stress('hoop'),
      compressive: stress('compressive'),
    },
  };
}
