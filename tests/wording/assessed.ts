import { DEMOS } from '../../src/app/demos/demos.ts';
import { admit as admitDocument } from '../../src/app/state/admit.ts';
import type { Insert } from '../../src/core/inserts/insert.ts';
import { assess } from '../../src/core/joint/assess.ts';
import type { JointAssessment, Notice } from '../../src/core/joint/assessment.ts';
import type { Joint } from '../../src/core/joint/joint.ts';
import { noticesOf } from '../../src/core/joint/notices.ts';
import { admit } from '../../src/core/joint/stop.ts';
import type { SeatKind } from '../../src/core/pull-out/limit.ts';
import { askedTorque, holdOf } from '../../src/core/service/hold.ts';
import { marginsOf } from '../../src/core/service/margins.ts';
import type { Derived } from '../../src/core/sources/derived.ts';
import { wayOf } from '../../src/core/steps/steps.ts';
import type { ResolvedDocument } from '../../src/storage/resolve.ts';

/** The demonstration joints as the door lets them in, the stopped ones as if their use were general. */
export function demoJoints(): readonly ResolvedDocument[] {
  return DEMOS.map((document) => {
    const admitted = admitDocument(document);
    if (admitted.kind === 'refused') throw new Error(`${document.name} is refused`);
    const { resolved } = admitted;
    return { ...resolved, joint: { ...resolved.joint, use: 'general' } };
  });
}

/** The symbols do not depend on how many inserts a drawer holds. */
const INSERTS_EACH = 2;
const SEATS: readonly SeatKind[] = ['on-insert', 'on-plastic', 'over-gap', 'far-side'];

/** Each demonstration joint as it is, on every seat, pressed in cold, across the build, and with a slicer that corrects holes. */
function variantsOf(joint: Joint): readonly Joint[] {
  return [
    joint,
    ...SEATS.map((seatOverride): Joint => ({ ...joint, seatOverride })),
    { ...joint, insertSide: 'far-side' },
    { ...joint, gap: 1 },
    { ...joint, setting: 'hammered' },
    { ...joint, host: { ...joint.host, axis: 'across-build', bossDiameter: 12 } },
    { ...joint, holes: { ...joint.holes, compensation: 'in-slicer' } },
    { ...joint, loads: { ...joint.loads, pull: 0, shear: 0 } },
    { ...joint, tool: { kind: 'hand', deviation: 0.35, settings: [], step: 50 } },
  ];
}

/** The first inserts of every demonstration joint in all its variants, as far as its thread fits. */
export function assessments(): readonly {
  readonly joint: Joint;
  readonly insert: Insert;
  readonly assessment: JointAssessment;
  readonly notices: readonly Notice[];
}[] {
  return demoJoints().flatMap(({ joint, drawer }) =>
    variantsOf(joint).flatMap((variant) => {
      const admission = admit(variant);
      if (admission.kind === 'stopped') return [];
      return drawer
        .filter((insert) => insert.thread.id === variant.screw.thread.id)
        .slice(0, INSERTS_EACH)
        .map((insert) => {
          const assessment = assess(admission.joint, insert);
          const notices = noticesOf(admission.joint, insert, assessment);
          return { joint: variant, insert, assessment, notices };
        });
    }),
  );
}

/** The same joints through their lives, each with its margins. */
export function holds() {
  return assessments().flatMap(({ joint, insert, assessment }) => {
    const admission = admit(joint);
    const torque = askedTorque(assessment.torque);
    if (admission.kind === 'stopped' || torque === undefined) return [];
    const hold = holdOf(admission.joint, insert, torque);
    return [{ joint, hold, margins: hold.states.map((state) => marginsOf(state, joint.factors)) }];
  });
}

/** All computed numbers of a finding, wherever they stand in it, each once. */
export function derivedIn(value: unknown, seen = new Set<object>()): readonly Derived[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  seen.add(value);
  if ('formula' in value && 'entries' in value) {
    const own = value as Derived;
    return [own, ...own.entries.flatMap((entry) => derivedIn(wayOf(entry), seen))];
  }
  return Object.values(value).flatMap((inner) => derivedIn(inner, seen));
}
