import {
  capitalised,
  countWord,
  forceNumber,
  forceText,
  lengthText,
  torqueText,
} from '../../wording/amount.ts';
import type { PlanArrow } from './plan-arrows.ts';
import type { PlanInput, PlanScrew } from './plan-input.ts';

const JOINED = { separate: ', ', last: ' and ' };

/** "screws 1, 2 and 4" */
function screwsNamed(screws: readonly PlanScrew[]): string {
  const numbers = screws.map(({ number }) => String(number));
  const [last = '', ...others] = [...numbers].reverse();
  if (others.length === 0) return `screw ${last}`;
  return `screws ${[...others].reverse().join(JOINED.separate)}${JOINED.last}${last}`;
}

/** What a screw has to hold along itself; where the part presses on it, nothing pulls. */
export const pullWords = (pull: number): string =>
  pull < 0 ? `pressed ${forceNumber(-pull)}` : forceNumber(pull);

/** The two lines beside a screw of the plan. */
export const screwLines = ({ pull, shear, hasMostPull, hasMostShear }: PlanScrew): readonly string[] => [
  `${pull < 0 ? 'pressed' : 'pull'} ${forceNumber(Math.abs(pull))}${hasMostPull ? ', most' : ''}`,
  `shear ${forceNumber(shear)}${hasMostShear ? ', most' : ''}`,
];

/** The amount beside an arrow of the plan. */
export function arrowWords(id: PlanArrow['id'], { load }: PlanInput): string {
  const { force, moment } = load;
  switch (id) {
    case 'pull':
      return `pull ${forceText(force.pull)}`;
    case 'shear':
      return `across ${forceText(Math.hypot(force.x, force.y))}`;
    case 'moment-x':
      return `tilts ${torqueText(Math.abs(moment.x))}`;
    case 'moment-y':
      return `tilts ${torqueText(Math.abs(moment.y))}`;
    case 'moment-z':
      return `turns ${torqueText(Math.abs(moment.z))}`;
  }
}

const SIDE_WORDS = {
  x: { '-1': 'left', '0': '', '1': 'right' },
  y: { '-1': 'lower', '0': '', '1': 'upper' },
} as const;

/** Which edge stays down, in words; empty where none is asked for. */
export function edgeWords({ staysDown }: PlanInput): string {
  const sides = [SIDE_WORDS.y[staysDown.y], SIDE_WORDS.x[staysDown.x]].filter((side) => side !== '');
  if (sides.length === 0) return '';
  return `The ${sides.join(' and the ')} edge ${sides.length === 1 ? 'stays' : 'stay'} down.`;
}

function worstWords({ screws }: PlanInput): string {
  const clauses = (
    [
      ['pull', screws.filter(({ hasMostPull }) => hasMostPull)],
      ['shear', screws.filter(({ hasMostShear }) => hasMostShear)],
    ] as const
  ).flatMap(([kind, worst]) => {
    const [one] = worst;
    if (one) return [`most ${kind} on ${screwsNamed(worst)}, ${forceText(one[kind])}`];
    const [any] = screws;
    if (!any || screws.length === 1 || any[kind] === 0) return [];
    return [`the same ${kind} on every screw, ${forceText(any[kind])}`];
  });
  return clauses.length === 0 ? '' : `${capitalised(clauses.join('; '))}.`;
}

/** The plan in words, for whoever cannot see it. */
export function describePlan(input: PlanInput): string {
  const { screws, load } = input;
  const { force, at, moment } = load;
  const count = screws.length === 1 ? 'One screw' : `${capitalised(countWord(screws.length))} screws`;
  const loads = [
    force.pull === 0 ? '' : `a pull of ${forceText(force.pull)}`,
    force.x === 0 ? '' : `${forceText(force.x)} along x`,
    force.y === 0 ? '' : `${forceText(force.y)} along y`,
    ...(['x', 'y', 'z'] as const).map((axis) =>
      moment[axis] === 0 ? '' : `a moment of ${torqueText(moment[axis])} about ${axis}`,
    ),
  ].filter((one) => one !== '');
  const height =
    at.z === 0 ? '' : `, ${lengthText(Math.abs(at.z))} ${at.z > 0 ? 'above' : 'below'} the joint`;
  const acting =
    loads.length === 0
      ? 'No load is given.'
      : `At x ${lengthText(at.x)}, y ${lengthText(at.y)}${height} ${loads.length === 1 ? 'acts' : 'act'} ${loads.join(JOINED.separate)}.`;
  return [`${count} in plan.`, acting, edgeWords(input), worstWords(input)]
    .filter((sentence) => sentence !== '')
    .join(' ');
}
