/** A point of the section, mm: x from the axis to the right, y from the printed face downwards. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Corners of a closed shape; the last one joins the first. */
export type Outline = readonly Point[];

/** Corners of a line that stays open. */
export type Polyline = readonly Point[];

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const point = (x: number, y: number): Point => ({ x, y });

/** The same points on the other side of the axis. */
export function mirrored(points: readonly Point[]): readonly Point[] {
  return points.map(({ x, y }) => ({ x: -x, y }));
}

/** The same points upside down about a level. */
export function turnedOver(points: readonly Point[], level: number): readonly Point[] {
  return points.map(({ x, y }) => ({ x, y: 2 * level - y }));
}

export function lowered(points: readonly Point[], by: number): readonly Point[] {
  return points.map(({ x, y }) => ({ x, y: y + by }));
}

export function boxOutline({ left, right, top, bottom }: Box): Outline {
  return [point(left, top), point(right, top), point(right, bottom), point(left, bottom)];
}

/** The box to the right of the axis and its mirror image; none when it has no extent. */
export function bothSides(box: Box): readonly Outline[] {
  if (box.right <= box.left || box.bottom <= box.top) return [];
  const right = boxOutline(box);
  return [mirrored(right), right];
}

export function extent(points: readonly Point[]): Box {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}
