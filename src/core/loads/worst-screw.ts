import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';
import { momentsOf, ofStatics } from './moment-steps.ts';
import type { Pivot } from './out-of-plane.ts';
import { centroidOf, screwPositions } from './pattern.ts';
import type { LoadOnPattern } from './screw-loads.ts';
import { momentAlong, type PrincipalAxis, principalAxes } from './spread.ts';

/** A load on a pattern, and the screw that is asked about, by its place in the list. */
export interface LoadOnScrew extends LoadOnPattern {
  readonly index: number;
}

/** Symbols along each principal axis, at each edge, and of each moment. */
const AXES = {
  u: { moment: 'M_u', place: 'u_w', squares: 'S_u', x: 'u_x', y: 'u_y' },
  v: { moment: 'M_v', place: 'v_w', squares: 'S_v', x: 'v_x', y: 'v_y' },
} as const;
const EDGES = {
  x: { edge: 'b_x', arm: 'L_x', place: 'x_w', squares: 'S_x' },
  y: { edge: 'b_y', arm: 'L_y', place: 'y_w', squares: 'S_y' },
} as const;
/** A term of a sum, with what it is worked out from. */
interface Term {
  readonly text: string;
  readonly value: number;
  readonly entries: readonly Entry[];
}

/**
 * Pull on one screw of a group, with its derivation; see outOfPlanePulls.
 *
 *     Fs = Fz/n + Mu · uw/Su + Mv · vw/Sv              about the centroid; u, v principal axes, S = Σu²
 *     Fs = Fz/n + |Mx| · Ly/Sy + |My| · Lx/Sx          about the edges that stay down, S = ΣL²
 *
 * @param on - layout, load and pivot [mm, N, N·mm], the screw
 * @returns Fs [N], negative where the part presses
 * @source nasa-rp-1228 rotation about the compression edge
 * @source shigley ch. 8, eccentric loading
 */
export function pullOnScrew(on: LoadOnScrew): Derived {
  const [u, v] = principalAxes(screwPositions(on.pattern));
  const tilts =
    on.pivot.kind === 'edge'
      ? aboutEdges(on, on.pivot)
      : [...(u ? aboutAxis(on, u, 'u') : []), ...(v ? aboutAxis(on, v, 'v') : [])];
  return summed('F_s', [shareOf(on, 'F_z', on.load.force.pull), ...tilts]);
}

/**
 * Load across one screw of a group along x and along y, with their derivations; see inPlaneForces.
 *
 *     Qx = Fx/n − Mz · yw/Sr        Qy = Fy/n + Mz · xw/Sr        Sr = Σr²
 *
 * @param on - layout and load [mm, N, N·mm], the screw
 * @returns Qx and Qy [N]
 * @source shigley ch. 8, shear of bolt groups
 */
export function shearOnScrew(on: LoadOnScrew): { readonly x: Derived; readonly y: Derived } {
  const { z } = momentsOf(on);
  const arms = armsOf(on);
  const { x, y } = armOf(on);
  const squares = sumOfSquares(
    'S_r',
    arms.map((arm) => Math.hypot(arm.x, arm.y)),
  );
  const turn = (sign: 1 | -1, symbol: string, place: number): readonly Term[] =>
    squares.value === 0 ? [] : [ratioTerm({ sign, moment: z, arm: entry(symbol, place, 'mm'), squares })];
  return {
    x: summed('Q_x', [shareOf(on, 'F_x', on.load.force.x), ...turn(-1, 'y_w', y)]),
    y: summed('Q_y', [shareOf(on, 'F_y', on.load.force.y), ...turn(1, 'x_w', x)]),
  };
}

const armsOf = ({ pattern }: LoadOnScrew) => {
  const positions = screwPositions(pattern);
  const centre = centroidOf(positions);
  return positions.map(({ x, y }) => ({ x: x - centre.x, y: y - centre.y }));
};

/** Place of the screw from the centroid. */
const armOf = (on: LoadOnScrew) => armsOf(on)[on.index] ?? { x: 0, y: 0 };

const shareOf = ({ pattern }: LoadOnScrew, symbol: string, force: number): Term => {
  const n = screwPositions(pattern).length;
  return {
    text: `${symbol}/n`,
    value: force / n,
    entries: [entry(symbol, force, 'N'), entry('n', n, '-')],
  };
};

interface Ratio {
  readonly sign: 1 | -1;
  readonly moment: Derived;
  readonly arm: Entry;
  readonly squares: Entry;
}

/** Moment times arm over the squares of all arms. */
const ratioTerm = ({ sign, moment, arm, squares }: Ratio): Term => ({
  text: `${sign < 0 ? '− ' : '+ '}${moment.symbol} · ${arm.symbol}/${squares.symbol}`,
  value: (sign * moment.value * arm.value) / squares.value,
  entries: [entryFrom(moment), arm, squares],
});

/** A part that turns about the centroid, along one principal axis. */
function aboutAxis(on: LoadOnScrew, axis: PrincipalAxis, name: 'u' | 'v'): readonly Term[] {
  if (axis.spread === 0) return [];
  const symbols = AXES[name];
  const { direction, places } = axis;
  const both = [entry(symbols.x, direction.x, '-'), entry(symbols.y, direction.y, '-')];
  const { x, y } = momentsOf(on);
  const moment = ofStatics(
    symbols.moment,
    {
      text: `M_x · ${symbols.y} − M_y · ${symbols.x}`,
      value: momentAlong(axis, { x: x.value, y: y.value }),
    },
    [entryFrom(x), entryFrom(y), ...both],
    'N·mm',
  );
  const arm = armOf(on);
  const place = ofStatics(
    symbols.place,
    { text: `x_w · ${symbols.x} + y_w · ${symbols.y}`, value: places[on.index] ?? 0 },
    [entry('x_w', arm.x, 'mm'), entry('y_w', arm.y, 'mm'), ...both],
    'mm',
  );
  const squares = sumOfSquares(symbols.squares, places);
  return [ratioTerm({ sign: 1, moment, arm: entryFrom(place), squares })];
}

/** A part that turns about the edges that stay down. */
function aboutEdges(on: LoadOnScrew, edge: Extract<Pivot, { kind: 'edge' }>): readonly Term[] {
  const arms = armsOf(on);
  const { x, y } = momentsOf(on);
  const turned = (axis: 'x' | 'y', moment: Derived, lifts: number): readonly Term[] => {
    const side = Math.sign(lifts);
    if (side === 0) return [];
    const symbols = EDGES[axis];
    const places = arms.map((arm) => edge[axis] + side * arm[axis]);
    const arm = ofStatics(
      symbols.arm,
      { text: `${symbols.edge} ${side < 0 ? '−' : '+'} ${symbols.place}`, value: places[on.index] ?? 0 },
      [entry(symbols.edge, edge[axis], 'mm'), entry(symbols.place, armOf(on)[axis], 'mm')],
      'mm',
    );
    const squares = sumOfSquares(symbols.squares, places);
    // The moment lifts whatever its sense: its amount counts.
    return [ratioTerm({ sign: moment.value < 0 ? -1 : 1, moment, arm: entryFrom(arm), squares })];
  };
  return [...turned('y', x, x.value), ...turned('x', y, -y.value)];
}

/** More arms than these are summed up in their number. */
const LISTED_ARMS = 12;

const sumOfSquares = (symbol: string, places: readonly number[]): Entry => {
  const isListed = places.length <= LISTED_ARMS;
  return entryFrom({
    symbol,
    value: places.reduce((sum, place) => sum + place ** 2, 0),
    unit: 'mm²',
    formula: isListed ? 'Σx²' : 'sum of the squares of the arms of all screws',
    entries: isListed
      ? places.map((place, index) => entry(`x_${index + 1}`, place, 'mm'))
      : [entry('n', places.length, '-')],
    source: 'elasticity',
    standing: 'published',
  });
};

/** A sum of terms, without those that are nothing. */
function summed(symbol: string, [first, ...others]: readonly Term[]): Derived {
  const terms = [...(first ? [first] : []), ...others.filter(({ value }) => value !== 0)];
  const seen = new Map(terms.flatMap(({ entries }) => entries.map((one) => [one.symbol, one] as const)));
  return {
    symbol,
    value: terms.reduce((sum, { value }) => sum + value, 0),
    unit: 'N',
    formula: terms.map(({ text }) => text).join(' '),
    entries: [...seen.values()],
    source: symbol === 'F_s' ? 'nasa-rp-1228' : 'shigley',
    standing: 'published',
  };
}
