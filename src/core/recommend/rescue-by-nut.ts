import { surroundingsOf } from '../joint/situation-of.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { pressedPlastic } from '../pull-out/pressed-plastic.ts';
import { bearingArea } from '../screws/head-bearing.ts';
import type { HexNut, Screw, Washer } from '../screws/screw.ts';
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
export function rescueByNut(joint: AnswerableJoint, bore: number, nuts: readonly HexNut[]): Rescue {
  const code = 'nut-behind';
  const { screw } = joint;
  const nut = nuts.find(({ thread }) => thread === screw.thread.id);
  if (!nut) return { kind: 'impossible', code, why: 'no-nut-known', thread: screw.thread.designation };
  const washer = screw.washer ?? screw.alternatives.washer;
  const outside = washer?.outsideDiameter ?? nut.bearingDiameter;
  const hole = Math.max(bore, screw.thread.clearanceHoles.medium, washer?.holeDiameter ?? 0);
  if (outside <= hole) return { kind: 'impossible', code, why: 'falls-through', outside, hole };
  const least = lengthThrough(joint, nut, washer);
  const screwLength = screw.standardLengths.find((length) => length >= least);
  if (screwLength === undefined) {
    return { kind: 'impossible', code, why: 'no-screw-length', least, longest: longestOf(screw) };
  }
  const area = bearingArea({ shape: 'cylindrical', outerDiameter: outside, holeDiameter: hole });
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
    screwLength,
    holds,
    isEnough: isEnough(joint, holds.value),
  };
}

const longestOf = ({ standardLengths }: Screw): number => Math.max(0, ...standardLengths);

/** Least length of a screw from its head through both parts, washers and nut, mm. */
function lengthThrough({ clamped, gap, host, screw }: AnswerableJoint, nut: HexNut, washer?: Washer): number {
  const underHead = screw.washer?.thickness ?? 0;
  const behind = washer?.thickness ?? 0;
  const parts = clamped.thickness + gap + host.thickness;
  return underHead + parts + behind + nut.thickness + STAND_OUT_PITCHES * screw.thread.pitch;
}
