import { withoutDust } from '../numerics/binary-dust.ts';
import { type Lever, withJoint } from './lever.ts';

const LEAST_LINES = 1;
const MOST_LINES = 30;
const INFILL_STEP = 0.1;

/** Infill density after a number of steps; the last one up ends at solid. */
function infillAfter(density: number, steps: number): number | undefined {
  const after = withoutDust(density + INFILL_STEP * steps);
  const oneLess = withoutDust(density + INFILL_STEP * (steps - 1));
  return after < 0 || oneLess >= 1 ? undefined : Math.min(after, 1);
}

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
    // From no infill at all to solid.
    remedySteps: Math.round(1 / INFILL_STEP),
    sizeOf: ({ joint: { host } }, steps) => {
      const density = infillAfter(host.infill.density, steps) ?? host.infill.density;
      return withoutDust(100 * (density - host.infill.density));
    },
    move: (subject, steps) => {
      const { host } = subject.joint;
      const density = infillAfter(host.infill.density, steps);
      if (density === undefined) return undefined;
      return withJoint(subject, { host: { ...host, infill: { ...host.infill, density } } });
    },
  },
];
