import { FITTED_DIAMETERS } from '../holes/print-error.ts';
import type { Insert } from '../inserts/insert.ts';
import { CREEP_POINTS } from '../relaxation/findley.ts';
import type { JointAssessment, Notice, NoticeCode } from './assessment.ts';
import type { AnswerableJoint } from './stop.ts';

/** Below this chance of landing in the window, a coupon is worth more than another calculation, [-]. */
const RARELY_FITS = 0.8;
/** Density of infill in the joining zone above which a study found no more to gain, [-]. */
const PRACTICE_INFILL = 0.7;
/** Wall above which the same study found no more to gain, mm. */
const PRACTICE_WALL = 2.4;
/** Floor under a hole that printing services ask for, mm. */
const PRACTICE_FLOOR = 2;
/** Length below which an insert is called short, in thread diameters: 3 mm of M3 is. */
const SHORT_INSERT_DIAMETERS = 1.1;
/** Readings that differ by more than this many permissible errors are looked at again. */
const SCATTER_IN_PERMISSIBLE_ERRORS = 3;

/** An assessment before its notices. */
export type Unnoticed = Omit<JointAssessment, 'notices'>;

/** What a notice may look at. */
interface Look {
  readonly joint: AnswerableJoint;
  readonly insert: Insert;
  readonly found: Unnoticed;
}

/** Facts of the notice, or undefined where there is nothing to say. */
type Rule = (look: Look) => Notice['facts'] | undefined;

const spreadOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

const RULES: readonly (readonly [NoticeCode, Rule])[] = [
  [
    'seat-overruled',
    ({ found: { seat } }) =>
      seat.reason === 'overruled' ? { chosen: seat.kind, geometry: seat.fromGeometry } : undefined,
  ],
  [
    'printed-part-on-insert-ring',
    ({ joint, found }) =>
      joint.clamped.material.kind === 'printed' && !joint.clamped.sleeve && found.seat.kind === 'on-insert'
        ? { material: joint.clamped.material.name }
        : undefined,
  ],
  [
    'countersunk-wedges-printed-part',
    ({ joint }) =>
      joint.screw.head.shape === 'countersunk' &&
      joint.clamped.material.kind === 'printed' &&
      !joint.clamped.sleeve
        ? { material: joint.clamped.material.name }
        : undefined,
  ],
  [
    'dial-above-breaking-torque',
    ({ joint, found }) => {
      const { breakingTorque } = joint.screw;
      return found.torque.kind === 'window' &&
        breakingTorque &&
        found.torque.dial.value > breakingTorque.torque
        ? { dial: found.torque.dial.value, breaking: breakingTorque.torque }
        : undefined;
    },
  ],
  [
    'above-service-temperature',
    ({ joint }) => {
      const { serviceTemperature } = joint.loads;
      const { material: lid } = joint.clamped;
      const polymers = lid.kind === 'printed' ? [joint.host.material, lid.polymer] : [joint.host.material];
      const warm = polymers.find(({ serviceMax }) => serviceTemperature > serviceMax.value);
      return (
        warm && { temperature: serviceTemperature, greatest: warm.serviceMax.value, material: warm.name }
      );
    },
  ],
  [
    'cold-setting-may-split',
    ({ joint }) => (joint.setting === 'heat-set' ? undefined : { setting: joint.setting }),
  ],
  [
    'short-insert',
    ({ joint, found }) => {
      const length = found.dimensions.length.estimate.value;
      const least = SHORT_INSERT_DIAMETERS * joint.screw.thread.nominalDiameter;
      return length < least ? { length, least, thread: joint.screw.thread.designation } : undefined;
    },
  ],
  [
    'elastomer-host',
    ({ joint }) => (joint.host.material.elastomer ? { material: joint.host.material.name } : undefined),
  ],
  [
    'insert-across-layers',
    ({ joint }) => (joint.host.axis === 'across-build' ? { material: joint.host.material.name } : undefined),
  ],
  [
    'boss-below-practice',
    ({ joint, found }) => {
      const given = joint.host.bossDiameter;
      const least = found.hole.bossDiameter.value;
      return given !== undefined && given < least ? { given, least } : undefined;
    },
  ],
  [
    'wall-below-practice',
    ({ found }) => {
      const wall = found.hole.wall.value;
      return wall < PRACTICE_WALL ? { wall, practice: PRACTICE_WALL } : undefined;
    },
  ],
  [
    'infill-below-practice',
    ({ joint }) =>
      joint.host.infill.density < PRACTICE_INFILL
        ? { percent: 100 * joint.host.infill.density, practice: 100 * PRACTICE_INFILL }
        : undefined,
  ],
  [
    'floor-below-practice',
    ({ joint, found }) => {
      const floor = found.hole.floor.value;
      return joint.insertSide === 'near-side' && floor < PRACTICE_FLOOR
        ? { floor, practice: PRACTICE_FLOOR }
        : undefined;
    },
  ],
  [
    'hole-outside-fit-range',
    ({ joint, found }) => {
      const drawn = found.hole.drawn.value;
      const outside = drawn < FITTED_DIAMETERS.least || drawn > FITTED_DIAMETERS.greatest;
      return outside && joint.holes.behaviour.standing === 'estimate'
        ? { drawn, ...FITTED_DIAMETERS }
        : undefined;
    },
  ],
  [
    'hole-rarely-fits',
    ({ found }) => {
      const chance = found.hole.window.chance.value;
      return chance < RARELY_FITS ? { percent: 100 * chance } : undefined;
    },
  ],
  [
    'readings-scatter',
    ({ insert }) => {
      const features = [insert.knurlDiameter, insert.pilotDiameter, insert.length];
      const spread = Math.max(...features.map(({ values }) => spreadOf(values)));
      const { permissibleError } = insert.knurlDiameter;
      return permissibleError > 0 && spread > SCATTER_IN_PERMISSIBLE_ERRORS * permissibleError
        ? { spread, permissibleError }
        : undefined;
    },
  ],
  [
    'knurled-length-estimated',
    ({ insert, found }) =>
      insert.knurledLength === undefined
        ? { knurledLength: found.dimensions.knurledLength.estimate.value }
        : undefined,
  ],
  [
    'tightened-by-hand',
    ({ joint }) => (joint.tool.kind === 'hand' ? { percent: 100 * joint.tool.deviation } : undefined),
  ],
  [
    'no-load-given',
    ({ joint: { loads } }) => (loads.pull === 0 && loads.shear === 0 ? { pull: loads.pull } : undefined),
  ],
  [
    'threadlocker-cracks-host',
    ({ joint }) =>
      joint.host.material.crackedByThreadlocker ? { material: joint.host.material.name } : undefined,
  ],
  [
    'strengths-low-confidence',
    ({ joint }) => {
      const { tensileInPlane, tensileAcrossLayers, name } = joint.host.material;
      const weak = [tensileInPlane, tensileAcrossLayers].some((row) => row.provenance === 'from-memory');
      return weak ? { material: name } : undefined;
    },
  ],
  [
    'creep-extrapolated',
    ({ joint, found }) =>
      joint.loads.duration > CREEP_POINTS.last && found.preloadLeft.value < 1
        ? { hours: joint.loads.duration, known: CREEP_POINTS.last }
        : undefined,
  ],
  [
    'vibration',
    ({ joint }) => (joint.vibration === 'present' ? { locking: joint.threadLocking } : undefined),
  ],
  [
    'breaking-torque-unknown',
    ({ joint: { screw } }) =>
      screw.breakingTorque ? undefined : { propertyClass: screw.propertyClass.designation },
  ],
  [
    'setting-above-breaking-torque',
    ({ joint: { screw, tool } }) => {
      const beyond = screw.breakingTorque
        ? tool.settings.filter((one) => one > (screw.breakingTorque?.torque ?? one))
        : [];
      const [first] = beyond;
      return first !== undefined && screw.breakingTorque
        ? { setting: first, breaking: screw.breakingTorque.torque, screw: screw.thread.designation }
        : undefined;
    },
  ],
  ['bond-untested', ({ joint }) => ({ setting: joint.setting })],
];

/**
 * What to know beside the answers, the gravest first.
 *
 * @param joint - the joint
 * @param insert - its insert with all readings
 * @param found - the assessment so far
 * @returns notices by code with their facts; each code at most once
 * @source flm-insert-study infill and wall
 * @source trade-practice floor, short inserts, thread-locking fluid
 */
export function noticesOf(joint: AnswerableJoint, insert: Insert, found: Unnoticed): readonly Notice[] {
  return RULES.flatMap(([code, rule]) => {
    const facts = rule({ joint, insert, found });
    return facts === undefined ? [] : [{ code, facts }];
  });
}
