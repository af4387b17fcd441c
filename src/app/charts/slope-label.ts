export interface Frame {
  readonly area: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
  /** The name lies under its line rather than above it. */
  readonly below: boolean;
}

/** Where a name ends along its line, px, and how it is turned, degrees. */
export interface SlopePlace {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
}

const ABOVE = 6;
const BELOW = 16;
const FROM_END = 8;

/**
 * Lays a name along a line so that it ends near the line's last point inside the frame, above or below the line.
 * Undefined where the line has no length inside the frame.
 */
export function slopeLabel(
  name: string,
  line: readonly { readonly x: number; readonly y: number }[],
  { area, xDomain, yDomain, below }: Frame,
): SlopePlace | undefined {
  const across = area.width / (xDomain[1] - xDomain[0]);
  const up = area.height / (yDomain[1] - yDomain[0]);
  const pixels = line
    .filter(({ y }) => y <= yDomain[1])
    .map(({ x, y }) => ({ x: area.x + (x - xDomain[0]) * across, y: area.y + area.height - y * up }));
  const last = pixels.at(-1);
  const first = pixels.findLast((pixel) => last !== undefined && last.x - pixel.x >= 4 * name.length);
  if (last === undefined || first === undefined) return undefined;
  const direction = Math.atan2(last.y - first.y, last.x - first.x);
  const away = below ? BELOW : -ABOVE;
  return {
    x: last.x - FROM_END * Math.cos(direction) - away * Math.sin(direction),
    y: last.y - FROM_END * Math.sin(direction) + away * Math.cos(direction),
    angle: (direction * 180) / Math.PI,
  };
}
