import { surroundingsOf } from '../joint/situation-of.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { pressedPlastic } from '../pull-out/pressed-plastic.ts';
import { bearingArea } from '../screws/head-bearing.ts';
import type { HexNut, Screw, Washer } from '../screws/screw.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { Rescue } from './rescue.ts';
import { isEnough } from './tried-insert.ts';

/** How far a screw stands out of its nut at least, in pitches (common practice). */
const STAND_OUT_PITCHES = 1;

/**
 * Hexagon nut behind the part, on a plain washer where one is known.
 *
 *     A = π/4 · (dw² − dh²)        F = σc · A, for years σc · A · E(1000 h)/E
 *
 * dh is the hole that is there, on the far face too: what lies over an empty hole is not counted. Whether the far side
 * can be reached, and bending of a thin part, are not judged. The nut itself is stronger than its screw.
 *
 * @param joint - printed part, screw with its lengths
 * @param bore - bore of the hole that is there [mm]
 * @param nuts - rows of nuts
 * @returns the area [mm²] and what it bears [N]; or why there is none: no nut known for the thread, it falls through the
 *   hole, no standard screw is long enough
 * @source iso-4032 sizes of the nut
 * @source printed-materials compressive strength and creep ratio
 */
export function rescueByNut(joint: AnswerableJoint, bore: Derived, nuts: readonly HexNut[]): Rescue {
  const code = 'nut-behind';
  const { screw } = joint;
  const nut = nuts.find(({ thread }) => thread === screw.thread.id);
  if (!nut) return { kind: 'impossible', code, why: 'no-nut-known', thread: screw.thread.designation };
  const washer = screw.washer ?? screw.alternatives.washer;
  const outside = washer?.outsideDiameter ?? nut.bearingDiameter;
  const hole = holeUnder(bore, screw, washer);
  if (outside <= hole.value) return { kind: 'impossible', code, why: 'falls-through', outside, hole };
  const least = lengthThrough(joint, nut, washer);
  const length = screw.standardLengths.find((standard) => standard >= least.value);
  if (length === undefined) {
    return { kind: 'impossible', code, why: 'no-screw-length', least, longest: longestOf(screw) };
  }
  const area = bearingArea({
    shape: 'cylindrical',
    outerDiameter: outside,
    holeDiameter: hole.value,
    worked: { hole: entryFrom(hole) },
  });
  const { strengths, material } = surroundingsOf(joint);
  const { characteristic: holds } = pressedPlastic({
    symbol: 'F_nb',
    area,
    compressive: strengths.compressive,
    polymer: material,
  });
  return {
    kind: 'possible',
    code,
    nut,
    ...(washer ? { washer } : {}),
    area,
    screwLength: shortestFrom(least, length),
    holds,
    isEnough: isEnough(joint, holds.value),
  };
}

const longestOf = ({ standardLengths }: Screw): number => Math.max(0, ...standardLengths);

/** Hole that nut or washer lies on. */
function holeUnder(bore: Derived, { thread }: Screw, washer: Washer | undefined): Derived {
  const clearance = thread.clearanceHoles.medium;
  const inWasher = washer?.holeDiameter ?? 0;
  return {
    symbol: 'D_n',
    value: Math.max(bore.value, clearance, inWasher),
    unit: 'mm',
    formula: washer ? 'max(D_t, d_h, d_o)' : 'max(D_t, d_h)',
    entries: [
      entryFrom(bore),
      entry('d_h', clearance, 'mm'),
      ...(washer ? [entry('d_o', inWasher, 'mm')] : []),
    ],
    source: 'own-model',
    standing: bore.standing,
  };
}

const shortestFrom = (least: Derived, length: number): Derived => ({
  ...least,
  symbol: 'l',
  value: length,
  formula: 'shortest standard length from l_least on',
  entries: [entryFrom(least)],
});

/** Least length of a screw from its head through both parts, washers and nut, mm. */
function lengthThrough(joint: AnswerableJoint, nut: HexNut, washer?: Washer): Derived {
  const { clamped, gap, host, screw } = joint;
  const entries = [
    entry('lid', clamped.thickness, 'mm'),
    entry('gap', gap, 'mm'),
    entry('part', host.thickness, 'mm'),
    ...(screw.washer ? [entry('washer', screw.washer.thickness, 'mm')] : []),
    ...(washer ? [entry('t_w', washer.thickness, 'mm')] : []),
    entry('m_n', nut.thickness, 'mm'),
  ];
  const { pitch } = screw.thread;
  return {
    symbol: 'l_least',
    value: entries.reduce((sum, { value }) => sum + value, STAND_OUT_PITCHES * pitch),
    unit: 'mm',
    formula: `${entries.map(({ symbol }) => symbol).join(' + ')} + P`,
    entries: [...entries, entry('P', pitch, 'mm')],
    source: 'trade-practice',
    standing: 'common-practice',
  };
}
