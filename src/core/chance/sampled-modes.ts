import { MODES_AT } from '../joint/modes.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import { isWorn } from '../joint/sustained.ts';
import type { FailureMode, LoadPath } from '../pull-out/limit.ts';
import type { ModeRule, Situation } from '../pull-out/situation.ts';
import { capacityDeviation, MOST_FREEDOM, type ScatterKind, scatterKindOf } from './scatter.ts';
import { type Shifts, shiftsOf } from './shifted-situations.ts';

/** A mode that tightening loads, as plain numbers. Forces in N, torques in N·mm. */
export interface SampledMode {
  readonly mode: FailureMode;
  readonly path: Exclude<LoadPath, 'pull'>;
  readonly scatter: ScatterKind;
  /** Whether the time under load wears it down. */
  readonly isWorn: boolean;
  /** Median capacity at the intended bite. */
  readonly median: number;
  /** Deviation of the capacity's logarithm, [-]. */
  readonly deviation: number;
  /** What one standard deviation of a quantity adds to the capacity, as a share of the median, [-]. */
  readonly perKnurlDiameter: number;
  readonly perWall: number;
}

/** Degrees of freedom that the knurl's scatter is drawn with. */
export const knurlFreedomOf = ({ bond }: Situation): number =>
  Math.min(Math.round(bond.scatter.freedom.value), MOST_FREEDOM);

/**
 * Medians where warmth and creep are as expected, deviations that lead from there to the characteristic values, which
 * take the careful ends: what is doubtful about them lies in the deviation, like the loss to creep of pressed plastic.
 *
 * @param joint - repeatability of its walls [mm]
 * @param situations - as expected, and at the careful ends; the bite in both as intended
 * @returns the modes that tightening loads, in their order
 * @source own-model lognormal through both values
 */
export function sampledModes(
  joint: AnswerableJoint,
  { expected, careful }: { readonly expected: Situation; readonly careful: Situation },
): SampledMode[] {
  const shifts = shiftsOf(expected, joint.holes.behaviour.repeatability);
  return MODES_AT[expected.seat].flatMap(({ rule, path }) => {
    if (path === 'pull') return [];
    const capacity = rule.capacity(expected);
    const characteristic = rule.capacity(careful)?.characteristic;
    if (!capacity || !characteristic) return [];
    const scatter = scatterKindOf(rule.mode, expected.clamped.contact.kind);
    return [
      {
        mode: rule.mode,
        path,
        scatter,
        isWorn: isWorn(rule.mode, path),
        median: capacity.median.value,
        deviation: capacityDeviation(
          { median: capacity.median, characteristic },
          scatter,
          knurlFreedomOf(expected),
        ),
        ...slopesOf(rule, shifts, capacity.median.value),
      },
    ];
  });
}

/** Half of what a capacity moves between one standard deviation below and one above, over the median, [-]. */
function slopesOf(rule: ModeRule, shifts: Shifts, median: number) {
  const slope = (shift: (deviations: number) => Situation): number => {
    const at = (deviations: number) => rule.capacity(shift(deviations))?.median.value ?? median;
    return median === 0 ? 0 : (at(1) - at(-1)) / (2 * median);
  };
  return {
    perKnurlDiameter: slope(shifts.knurlDiameter),
    perWall: slope(shifts.wall),
  };
}
