import { DRIVER_DEVIATION } from '../torque/tool-deviation.ts';
import { type Lever, once, withJoint } from './lever.ts';

/** Wall of the metal spacer that is tried, mm. */
const SLEEVE_WALL = 1;

/** What the screw, its seat and its tool can change. */
export const CLAMP_LEVERS: readonly Lever[] = [
  {
    id: 'washer',
    unit: 'change',
    size: 1,
    remedySteps: 1,
    move: once((subject) => {
      const { screw } = subject.joint;
      const { washer } = screw.alternatives;
      if (screw.washer || !washer || screw.head.shape === 'countersunk') return undefined;
      return withJoint(subject, { screw: { ...screw, washer } });
    }),
  },
  {
    id: 'close-gap',
    unit: 'change',
    size: 1,
    remedySteps: 1,
    move: once((subject) => {
      const { joint } = subject;
      if (joint.insertSide === 'far-side' || (joint.gap === 0 && joint.sunk === 0)) return undefined;
      const { seatOverride: _, ...found } = joint;
      return { ...subject, joint: { ...found, gap: 0, sunk: 0 } };
    }),
  },
  {
    id: 'sleeve',
    unit: 'change',
    size: 1,
    remedySteps: 1,
    move: once((subject) => {
      const { clamped, screw } = subject.joint;
      const { sleeveMaterial } = subject.joint.alternatives;
      if (clamped.sleeve || clamped.material.kind === 'metal' || !sleeveMaterial) return undefined;
      // A countersunk head sinks into the part: it finds no flat end to press on.
      if (screw.head.shape === 'countersunk') return undefined;
      const outsideDiameter = clamped.clearanceHole + 2 * SLEEVE_WALL;
      return withJoint(subject, {
        clamped: { ...clamped, sleeve: { outsideDiameter, material: sleeveMaterial } },
      });
    }),
  },
  {
    id: 'oiled-thread',
    unit: 'change',
    size: 1,
    remedySteps: 1,
    move: once((subject) => {
      const { screw } = subject.joint;
      const { friction } = screw.alternatives;
      return friction && friction.id !== screw.friction.id
        ? withJoint(subject, { screw: { ...screw, friction } })
        : undefined;
    }),
  },
  {
    id: 'torque-driver',
    unit: 'change',
    size: 1,
    remedySteps: 1,
    move: once((subject) => {
      const { tool } = subject.joint;
      return tool.kind === 'hand'
        ? withJoint(subject, { tool: { ...tool, kind: 'torque-driver', deviation: DRIVER_DEVIATION } })
        : undefined;
    }),
  },
  {
    id: 'stronger-screw',
    unit: 'change',
    size: 1,
    remedySteps: 1,
    move: once((subject) => {
      const { screw } = subject.joint;
      const { propertyClass } = screw.alternatives;
      return propertyClass && propertyClass.yieldStrengthMin > screw.propertyClass.yieldStrengthMin
        ? withJoint(subject, { screw: { ...screw, propertyClass } })
        : undefined;
    }),
  },
];
