/** A text on the scale with the room it takes, px. */
export interface Label {
  readonly text: string;
  /** Left end. */
  readonly left: number;
  readonly width: number;
  readonly baseline: number;
  readonly size: number;
  /** End of the text that its mark holds, where the face is narrower than the room kept for it. */
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Room a letter takes of its size in the widest of the faces, figures and letters mixed. */
const WIDTH_OF_LETTER = 0.56;
export const LABEL_GAP = 8;

export const textWidth = (text: string, size: number): number =>
  Math.ceil(text.length * size * WIDTH_OF_LETTER);

/** Whether two labels of one line meet or come closer than a gap. */
export const meet = (one: Label, other: Label): boolean =>
  one.left < other.left + other.width + LABEL_GAP && other.left < one.left + one.width + LABEL_GAP;

export interface LabelPlace {
  readonly x: number;
  readonly side: 'before' | 'after' | 'over';
  readonly size: number;
  readonly baseline: number;
  /** Width of the scale: a label that would leave it is moved inwards. */
  readonly within: number;
}

/** Puts a text beside or over its mark; without room on its side it goes to the other one. */
export function labelAt(text: string, { x, side, size, baseline, within }: LabelPlace): Label {
  const width = textWidth(text, size);
  const before = x - LABEL_GAP - width;
  const after = x + LABEL_GAP;
  const fits = (left: number) => left >= 0 && left + width <= within;
  const [first, second] = side === 'before' ? [before, after] : [after, before];
  const wanted = side === 'over' ? x - width / 2 : fits(first) || !fits(second) ? first : second;
  const left = Math.min(Math.max(0, wanted), Math.max(0, within - width));
  const anchor = side === 'over' ? 'middle' : left === before ? 'end' : 'start';
  return { text, left, width, baseline, size, anchor };
}

/** Where the text of a label is held. */
export const holdOf = ({ left, width, anchor }: Label): number =>
  anchor === 'start' ? left : anchor === 'end' ? left + width : left + width / 2;

/** The lowest row for each label in which it meets no other, the first ones first. */
export function rowsOf(labels: readonly Label[]): readonly number[] {
  const rows: number[] = [];
  for (const [index, label] of labels.entries()) {
    let row = 0;
    while (labels.slice(0, index).some((other, at) => rows[at] === row && meet(other, label))) row += 1;
    rows.push(row);
  }
  return rows;
}

/** Those labels of one line that meet no other, the wanted ones first. */
export function thinned(labels: readonly Label[], isWanted: (label: Label) => boolean): ReadonlySet<Label> {
  const kept = new Set<Label>();
  for (const label of [...labels.filter(isWanted), ...labels]) {
    if (![...kept].some((other) => other !== label && meet(other, label))) kept.add(label);
  }
  return kept;
}
