import type { ScrewPosition } from '../../core/loads/pattern.ts';
import { type Point, point } from '../drawing/points.ts';
import type { PlanInput } from './plan-input.ts';

/** Where the plan stands on its sheet; the sheet's unit is one pixel at full width, y downwards. */
export interface PlanView {
  readonly width: number;
  readonly height: number;
  /** px for a millimetre. */
  readonly scale: number;
  readonly screwRadius: number;
  readonly place: (at: ScrewPosition) => Point;
}

export type PlanVariant = 'wide' | 'narrow';

interface Sheet {
  readonly width: number;
  readonly mostHeight: number;
  readonly beside: number;
  readonly above: number;
}

export const PLAN_SHEETS: Readonly<Record<PlanVariant, Sheet>> = {
  wide: { width: 540, mostHeight: 440, beside: 74, above: 62 },
  narrow: { width: 358, mostHeight: 390, beside: 62, above: 62 },
};

/** A screw is never drawn smaller than its number needs, px. */
const LEAST_RADIUS = 9;
/** A screw alone is drawn with this much round it, in heads. */
const ALONE = 4;

/** The largest scale at which screws, load and edges fit the sheet; the same along x and y. */
export function planView(input: PlanInput, variant: PlanVariant): PlanView {
  const { width, mostHeight, beside, above } = PLAN_SHEETS[variant];
  const { centroid, edge, load, headDiameter, screws } = input;
  const edges = edge
    ? [-1, 1].map((side) => ({ x: centroid.x + side * edge.x, y: centroid.y + side * edge.y }))
    : [];
  const shown = [...screws, ...edges, load.at, { x: 0, y: 0 }];
  const xs = shown.map(({ x }) => x);
  const ys = shown.map(({ y }) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [bottom, top] = [Math.min(...ys), Math.max(...ys)];
  const spread = right - left === 0 && top - bottom === 0 ? ALONE * headDiameter : 0;
  const scale = Math.min(
    (width - 2 * beside) / Math.max(right - left, spread, Number.MIN_VALUE),
    (mostHeight - 2 * above) / Math.max(top - bottom, spread, Number.MIN_VALUE),
  );
  const middle = (left + right) / 2;
  const height = Math.ceil((top - bottom) * scale + 2 * above);
  return {
    width,
    height,
    scale,
    screwRadius: Math.max(LEAST_RADIUS, (headDiameter / 2) * scale),
    place: ({ x, y }) => point(width / 2 + (x - middle) * scale, above + (top - y) * scale),
  };
}
