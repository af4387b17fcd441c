import { type End, polymerAt, sharesOf } from '../host/little-known.ts';
import { strengthLeft } from '../host/temperature.ts';
import {
  carefulEntry,
  type Derived,
  type Entry,
  entryFrom,
  rangeOfCareful,
  withWays,
} from '../sources/derived.ts';
import { CREEP_POINTS, creepFactor, creepFactorOf, creepLaw } from './findley.ts';
import type { PolymerCreep } from './polymer-creep.ts';
import { GROWTH_EXPONENT } from './warm-creep.ts';

/**
 * How many times its first value the compliance of a polymer has after a time, with the way from its tabulated ratios.
 *
 *     c = 1 + m · tⁿ        m = m23 · θ^−2.4        m23 and n through the ratios after 1 h (or 24 h) and 1000 h
 *
 * @param creep - of a polymer at service temperature
 * @param end - where its ratios are taken within what is known of them
 * @param hours - time under load t [h], ≥ 0
 * @returns c [-], ≥ 1
 * @source findley-iso-899 power law of creep
 * @source own-model growth with temperature
 */
export function creepFactorWay(creep: PolymerCreep, end: End, hours: number): Derived {
  const exponent = exponentOf(creep, end);
  return withWays(creepFactor(creep[end], hours), {
    m: coefficientOf(creep, end, exponent),
    n: exponent,
  });
}

/**
 * Creep factor at the careful end: the most that the polymer may have crept, with its range.
 *
 * @param creep - of a polymer at service temperature
 * @param hours - time under load t [h], ≥ 0
 * @returns c [-], ≥ 1
 * @source own-model range of a little known share
 */
export const mostCreep = (creep: PolymerCreep, hours: number): Derived => {
  // The less stiffness is left, the greater the factor: the ends change places.
  const at = (end: End) => creepFactorOf(creep[end], hours);
  const range = rangeOfCareful({ low: at('high'), middle: at('middle'), high: at('low') });
  return { ...creepFactorWay(creep, 'low', hours), ...range };
};

const FINDLEY = { unit: '-', source: 'findley-iso-899', standing: 'estimate' } as const;

/** Whether the law begins at 1 h: where something has crept by then. */
const fromFirstHour = ({ polymer }: PolymerCreep, end: End): boolean =>
  sharesOf(polymer.creepRatio1h, end).value < 1;

const ratioAfter1h = ({ polymer }: PolymerCreep, end: End): Entry =>
  carefulEntry('r_1', sharesOf(polymer.creepRatio1h, end), '-');
const ratioAfter24h = ({ polymer }: PolymerCreep, end: End): Entry =>
  carefulEntry('r_24', sharesOf(polymer.creepRatio24h, end), '-');
const ratioAfter1000h = ({ polymer }: PolymerCreep, end: End): Entry =>
  carefulEntry('r_1000', sharesOf(polymer.creepRatio1000h, end), '-');

function exponentOf(creep: PolymerCreep, end: End): Derived {
  const common = { symbol: 'n', value: creep[end].n, ...FINDLEY } as const;
  const last = ratioAfter1000h(creep, end);
  return fromFirstHour(creep, end)
    ? {
        ...common,
        formula: `ln((1/r_1000 − 1)/(1/r_1 − 1))/ln(${CREEP_POINTS.last})`,
        entries: [last, ratioAfter1h(creep, end)],
      }
    : {
        ...common,
        formula: `ln((1/r_1000 − 1)/(1/r_24 − 1))/ln(${CREEP_POINTS.last}/${CREEP_POINTS.second})`,
        entries: [last, ratioAfter24h(creep, end)],
      };
}

/** The coefficient at service temperature. */
function coefficientOf(creep: PolymerCreep, end: End, exponent: Derived): Derived {
  const { polymer, serviceTemperature } = creep;
  const cool = coolCoefficientOf(creep, end, exponent);
  const left = strengthLeft(end === 'low' ? polymer : polymerAt(polymer, end), serviceTemperature);
  return {
    symbol: 'm',
    value: creep[end].m,
    unit: '-',
    formula: `m_23 · θ^(−${GROWTH_EXPONENT})`,
    entries: [entryFrom(cool), entryFrom(left)],
    source: 'own-model',
    standing: 'estimate',
  };
}

/** The coefficient at 23 °C. */
function coolCoefficientOf(creep: PolymerCreep, end: End, exponent: Derived): Derived {
  const { polymer } = creep;
  const at = (row: typeof polymer.creepRatio1h) => sharesOf(row, end).value;
  const { m } = creepLaw({
    after1h: at(polymer.creepRatio1h),
    after24h: at(polymer.creepRatio24h),
    after1000h: at(polymer.creepRatio1000h),
  });
  const common = { symbol: 'm_23', value: m, ...FINDLEY } as const;
  return fromFirstHour(creep, end)
    ? { ...common, formula: '1/r_1 − 1', entries: [ratioAfter1h(creep, end)] }
    : {
        ...common,
        formula: `(1/r_24 − 1)/${CREEP_POINTS.second}^n`,
        entries: [ratioAfter24h(creep, end), entryFrom(exponent)],
      };
}
