import type { End } from '../host/little-known.ts';
import { creepFactorOf } from '../relaxation/findley.ts';
import type { PolymerCreep } from '../relaxation/polymer-creep.ts';
import { type Derived, type Entry, entry, entryBy, type Range } from '../sources/derived.ts';
import type { CreepingLoop, JointCreep, Plastic, PlasticLink } from './clamp-loop.ts';

/** Where creep and modulus of a plastic are taken within what is known of them. */
export interface Taken {
  readonly creep: End;
  readonly modulus: End;
}

export type Knowledge = Readonly<Record<Plastic, Taken>>;

/** From a restored preload, or from the assembly where none was, to a time; h. */
export interface Span {
  readonly restored: number | undefined;
  readonly until: number;
}

type Factors = Readonly<Record<Plastic, Readonly<Record<End, number>>>>;

/** How many times their first give the plastics have at the beginning and at the end of a span, [-]. */
export interface CreptSpan extends Span {
  readonly atFirst: Factors;
  readonly atLast: Factors;
}

const NOT_CREPT = { low: 1, middle: 1, high: 1 } as const;

/** A span with how the plastics of a joint have crept by then: the same for every insert. */
export function creptOver({ host, clamped }: JointCreep, { restored, until }: Span): CreptSpan {
  const factorsAt = (hours: number | undefined): Factors => ({
    host: factorsOf(host, hours),
    clamped: clamped === undefined ? NOT_CREPT : factorsOf(clamped, hours),
  });
  return { restored, until, atFirst: factorsAt(restored), atLast: factorsAt(until) };
}

const factorsOf = (creep: PolymerCreep, hours: number | undefined): Readonly<Record<End, number>> =>
  hours === undefined
    ? NOT_CREPT
    : {
        low: creepFactorOf(creep.low, hours),
        middle: creepFactorOf(creep.middle, hours),
        high: creepFactorOf(creep.high, hours),
      };

/**
 * Share of the preload that is left at the end of a span, as a plain number.
 *
 *     R = [Cb + Σ C · c(tr)]/[Cb + Σ C · c(t)]        over the plastics of the loop; c(tr) = 1 without a re-tightening
 *
 * The stretch of the screw and the squeeze of the parts stay the same in sum while the plastic grows more compliant.
 * A loop of metal alone keeps all of it. Quasi-elastic: the law of creep at constant load serves at falling load, which
 * makes the loss a little too great. Settling of rough faces and a change of temperature are not in it.
 *
 * @param loop - compliances of the screw Cb, > 0, and of the plastics C, > 0 [mm/N]
 * @param span - with creep factors c [-], ≥ 1, growing
 * @param known - where each plastic is taken within what is known of it
 * @returns R_F [-], above 0, at most 1; its steps: shareLeft
 * @source own-model constant length of the loop
 * @source findley-iso-899 power law of creep
 * @example as much give in the plastic as in the screw, c 1.5, leaves 0.8
 */
export function shareLeftOf(loop: CreepingLoop, { atFirst, atLast }: CreptSpan, known: Knowledge): number {
  let first = loop.elasticCompliance;
  let last = loop.elasticCompliance;
  for (const { of, compliance } of loop.links) {
    const { creep, modulus } = known[of];
    first += compliance[modulus] * atFirst[of][creep];
    last += compliance[modulus] * atLast[of][creep];
  }
  return first / last;
}

/** How the plastics are called in the formula: their compliance, and how it has grown at the end and at the beginning. */
const SYMBOLS: Readonly<Record<Plastic, Readonly<Record<'compliance' | 'until' | 'restored', string>>>> = {
  host: { compliance: 'C_h', until: 'c_h', restored: 'c_hr' },
  clamped: { compliance: 'C_l', until: 'c_l', restored: 'c_lr' },
};

/**
 * Share of the preload that is left at the end of a span, with its steps; see shareLeftOf.
 *
 * @param loop - compliances [mm/N]
 * @param span - with creep factors [-]
 * @param known - where each plastic is taken within what is known of it
 * @param range - what the other ends give
 * @returns R_F [-], above 0, at most 1
 * @source own-model constant length of the loop
 */
export function shareLeft(
  loop: CreepingLoop,
  span: CreptSpan,
  known: Knowledge,
  range: { readonly range?: Range } = {},
): Derived {
  const { links, screw, elasticCompliance } = loop;
  const number = {
    symbol: 'R_F',
    value: shareLeftOf(loop, span, known),
    unit: '-',
    source: 'own-model',
    standing: 'estimate',
    ...range,
  } as const;
  const time = entry('t', span.until, 'h');
  if (links.length === 0 || screw === undefined) {
    return { ...number, formula: '1, no plastic lies in the clamp path', entries: [time] };
  }
  const sumAt = (at: 'until' | 'restored') =>
    ['C_b', ...links.map(({ of }) => `${SYMBOLS[of].compliance} · ${SYMBOLS[of][at]}`)].join(' + ');
  const atFirst = ['C_b', ...links.map(({ of }) => SYMBOLS[of].compliance)].join(' + ');
  const elastic = entryBy('C_b', elasticCompliance, 'mm/N', screw);
  const plastic = links.flatMap((link) => entriesOf(link, loop, { span, known: known[link.of] }));
  return {
    ...number,
    formula: `(${span.restored === undefined ? atFirst : sumAt('restored')})/(${sumAt('until')})`,
    entries: [elastic, ...plastic, time],
  };
}

/** What a plastic puts into the formula. */
function entriesOf(
  { of, compliance, way }: PlasticLink,
  { creep }: CreepingLoop,
  { span, known }: { readonly span: CreptSpan; readonly known: Taken },
): readonly Entry[] {
  const symbols = SYMBOLS[of];
  const polymer = creep[of];
  if (polymer === undefined) throw new Error('a printed part of the loop creeps');
  const factorAt = (symbol: string, hours: number) => {
    const factor = creepFactorOf(polymer[known.creep], hours);
    return entryBy(symbol, factor, '-', (steps) => steps.creepFactorWay(polymer, known.creep, hours));
  };
  return [
    entryBy(symbols.compliance, compliance[known.modulus], 'mm/N', way(known.modulus)),
    factorAt(symbols.until, span.until),
    ...(span.restored === undefined ? [] : [factorAt(symbols.restored, span.restored)]),
  ];
}
