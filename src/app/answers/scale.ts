/** Where values lie on a line that is drawn from 0 to width. */
export interface Scale {
  readonly at: (value: number) => number;
  readonly width: number;
}

/** A linear scale whose ends are the two values. */
export function linearScale(
  ends: { readonly least: number; readonly greatest: number },
  width: number,
): Scale {
  const span = ends.greatest - ends.least;
  const at = (value: number) => (span > 0 ? ((value - ends.least) / span) * width : width / 2);
  return { at: (value) => Math.min(width, Math.max(0, at(value))), width };
}

/** Width of a figure or letter of the ruler's text over its height, for the widest of the faces. */
const LETTER = 0.56;
export const RULER_TEXT = 13;
const widthOf = (text: string): number => text.length * LETTER * RULER_TEXT;

export interface PlacedLabel {
  readonly text: string;
  /** Left edge. */
  readonly x: number;
}

/** Labels of one line below or above their ticks: inside the ends, and the later one left out where two would meet. */
export function placeLabels(
  labels: readonly { readonly text: string; readonly at: number }[],
  width: number,
  gap = 10,
): readonly PlacedLabel[] {
  const placed: (PlacedLabel & { readonly end: number })[] = [];
  for (const { text, at } of labels) {
    const size = widthOf(text);
    const x = Math.min(Math.max(0, at - size / 2), Math.max(0, width - size));
    const meets = placed.some((other) => x < other.end + gap && other.x < x + size + gap);
    if (!meets) placed.push({ text, x, end: x + size });
  }
  return placed.map(({ text, x }) => ({ text, x }));
}

const BELL_POINTS = 60;

/** The outline of a normal distribution standing on the line at base, as a path. */
export function bellPath(
  bell: { readonly expected: number; readonly standardDeviation: number },
  scale: Scale,
  ends: { readonly least: number; readonly greatest: number },
  height: { readonly base: number; readonly top: number },
): string {
  const points = Array.from({ length: BELL_POINTS + 1 }, (_, index) => {
    const value = ends.least + ((ends.greatest - ends.least) * index) / BELL_POINTS;
    const z = (value - bell.expected) / bell.standardDeviation;
    const y = height.base - (height.base - height.top) * Math.exp(-(z ** 2) / 2);
    return `${scale.at(value).toFixed(2)} ${y.toFixed(2)}`;
  });
  return `M0 ${height.base}L${points.join('L')}L${scale.width} ${height.base}Z`;
}
