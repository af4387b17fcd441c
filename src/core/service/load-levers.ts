import type { AnswerableJoint } from '../joint/stop.ts';
import { type Lever, type Subject, withJoint } from './lever.ts';

const LOAD_STEP = 0.1;
const TEMPERATURE_STEP = 5;
const DURATION_FACTOR = 2;
const MOST_RETIGHTENINGS = 4;

const withLoads = (subject: Subject, loads: Partial<AnswerableJoint['loads']>): Subject =>
  withJoint(subject, { loads: { ...subject.joint.loads, ...loads } });

/** Loads move by tenths of what is given; an absent load cannot be moved. */
const scaledLoad =
  (key: 'pull' | 'shear'): Lever['move'] =>
  (subject, steps) => {
    const given = subject.joint.loads[key];
    const factor = 1 + LOAD_STEP * steps;
    return given === 0 || factor < 0 ? undefined : withLoads(subject, { [key]: given * factor });
  };

/** What the joint is asked to bear, and how it is looked after. */
export const LOAD_LEVERS: readonly Lever[] = [
  {
    id: 'retightening',
    unit: 'times',
    size: 1,
    remedySteps: MOST_RETIGHTENINGS,
    move: (subject, steps) => {
      const retightenings = subject.joint.loads.retightenings + steps;
      if (retightenings < 0 || retightenings > MOST_RETIGHTENINGS) return undefined;
      return withLoads(subject, { retightenings });
    },
  },
  { id: 'pull', unit: '%', size: 100 * LOAD_STEP, remedySteps: 0, move: scaledLoad('pull') },
  { id: 'shear', unit: '%', size: 100 * LOAD_STEP, remedySteps: 0, move: scaledLoad('shear') },
  {
    id: 'temperature',
    unit: 'K',
    size: TEMPERATURE_STEP,
    remedySteps: 0,
    move: (subject, steps) => {
      const serviceTemperature = subject.joint.loads.serviceTemperature + TEMPERATURE_STEP * steps;
      return withLoads(subject, { serviceTemperature });
    },
  },
  {
    id: 'duration',
    unit: 'times',
    size: DURATION_FACTOR,
    // Doubled or halved.
    sizeOf: (_, steps) => DURATION_FACTOR ** steps,
    remedySteps: 0,
    move: (subject, steps) => {
      const { duration } = subject.joint.loads;
      return duration === 0
        ? undefined
        : withLoads(subject, { duration: duration * DURATION_FACTOR ** steps });
    },
  },
];
