import { withoutDust } from '../numerics/binary-dust.ts';
import { type Lever, withJoint } from './lever.ts';

const LEAST_LINES = 1;
const MOST_LINES = 30;
const INFILL_STEP = 0.1;

/** What the print can change: wall lines, infill. */
export const PRINT_LEVERS: readonly Lever[] = [
  {
    id: 'wall-lines',
    unit: 'lines',
    size: 1,
    remedySteps: 8,
    move: (subject, steps) => {
      const { host } = subject.joint;
      if (host.wall.kind !== 'lines') return undefined;
      const count = host.wall.count + steps;
      if (count < LEAST_LINES || count > MOST_LINES) return undefined;
      return withJoint(subject, { host: { ...host, wall: { ...host.wall, count } } });
    },
  },
  {
    id: 'infill',
    unit: '%',
    size: 100 * INFILL_STEP,
    remedySteps: 9,
    move: (subject, steps) => {
      const { host } = subject.joint;
      const density = withoutDust(host.infill.density + INFILL_STEP * steps);
      if (density < 0 || density > 1) return undefined;
      return withJoint(subject, { host: { ...host, infill: { ...host.infill, density } } });
    },
  },
];
