/** Diameters on the ruler, mm. */
export interface BoreSizes {
  readonly smallest: number;
  readonly pilot: number;
  readonly largest: number;
  readonly knurl: number;
  readonly bore: number;
}

export interface ScaleLabel {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly isBore: boolean;
}

export interface BoreScale {
  readonly height: number;
  readonly base: number;
  readonly fits: readonly [from: number, to: number];
  readonly touches: readonly [from: number, to: number];
  readonly ticks: readonly number[];
  readonly needle: number;
  readonly labels: readonly ScaleLabel[];
}

/** Line, and rows of names below it: two, so that neighbours never meet. */
const BASE = 44;
const NAME_ROWS = [BASE + 24, BASE + 42] as const;
const BORE_ROW = BASE - 28;
/** How far the line goes on beyond what is on it, over what is on it. */
const ROOM = 0.18;
/** Width of a letter of the ruler's text, px, for the widest of the faces. */
const LETTER = 7.6;

/** Where all stands on the ruler of a bore, px. */
export function boreScale(
  sizes: BoreSizes,
  width: number,
  diameterText: (diameter: number) => string,
): BoreScale {
  const { smallest, pilot, largest, knurl, bore } = sizes;
  const [least, greatest] = [Math.min(smallest, bore), Math.max(knurl, bore)];
  const room = ROOM * (greatest - least);
  const at = (diameter: number): number =>
    ((diameter - least + room) / (greatest - least + 2 * room)) * width;
  const label = (text: string, diameter: number, y: number, isBore = false): ScaleLabel => {
    const half = (text.length * LETTER) / 2;
    const x = at(diameter);
    if (x - half < 0) return { text, x: 0, y, anchor: 'start', isBore };
    if (x + half > width) return { text, x: width, y, anchor: 'end', isBore };
    return { text, x, y, anchor: 'middle', isBore };
  };
  const [upper, lower] = NAME_ROWS;
  return {
    height: lower + 8,
    base: BASE,
    fits: [at(pilot), at(largest)],
    touches: [at(smallest), at(knurl)],
    ticks: [smallest, pilot, largest, knurl].map(at),
    needle: at(bore),
    labels: [
      label(`this bore ${diameterText(bore)}`, bore, BORE_ROW, true),
      label(`melts in ${diameterText(smallest)}`, smallest, lower),
      label(`pilot ${diameterText(pilot)}`, pilot, upper),
      label(`bites enough ${diameterText(largest)}`, largest, lower),
      label(`knurl ${diameterText(knurl)}`, knurl, upper),
    ],
  };
}
