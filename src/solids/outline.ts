import type { Corner, Corners } from '../core/coupons/label.ts';

/** A closed line in the plane of a face, counter-clockwise; told apart from others by being itself. */
export interface Outline {
  readonly corners: Corners;
}

/**
 * Corners of every circle, so that bore and chamfer have as many: within 0.001 mm of a bore of 4.5 mm, 0.015 mm of a flange
 * of 55 mm.
 */
export const CIRCLE_CORNERS = 96;

export const rectangle = (length: number, width: number): Outline => ({
  corners: [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ],
});

/**
 * A circle as a polygon drawn round it: its flats are as far apart as the circle is wide, so a pin of the drawn diameter
 * goes in and calipers on a boss read it. Four flats lie square to the axes.
 */
export function circle(diameter: number, [across, up]: Corner): Outline {
  const radius = diameter / 2 / Math.cos(Math.PI / CIRCLE_CORNERS);
  return {
    corners: Array.from({ length: CIRCLE_CORNERS }, (_, place): Corner => {
      const angle = ((2 * place + 1) * Math.PI) / CIRCLE_CORNERS;
      return [across + radius * Math.cos(angle), up + radius * Math.sin(angle)];
    }),
  };
}

/** An outline part of the way from one to another with as many corners. */
export const between = (from: Outline, to: Outline, share: number): Outline => ({
  corners: from.corners.map(([x, y], place): Corner => {
    const [toX, toY] = to.corners[place] ?? [x, y];
    return [x + share * (toX - x), y + share * (toY - y)];
  }),
});

/** True where an outline surrounds a corner; the corner lies off the line itself. */
export function surrounds({ corners }: Outline, [x, y]: Corner): boolean {
  let inside = false;
  corners.forEach(([ax, ay], place) => {
    const [bx, by] = corners[(place + 1) % corners.length] ?? [ax, ay];
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  });
  return inside;
}
