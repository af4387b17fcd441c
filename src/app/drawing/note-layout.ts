import type { Note, NotePiece } from './notes.ts';
import { plainNumber } from './plain-value.ts';
import { type Point, point } from './points.ts';
import type { SectionInput } from './section-input.ts';
import { spread } from './spread.ts';
import type { Variant, View } from './view.ts';

/** A note beside the drawing, or its letter there; px of the sheet. */
export interface PlacedNote {
  readonly note: Note;
  readonly letter: string;
  readonly left: number;
  /** Level of the leader, through the middle of the first line. */
  readonly y: number;
  /** Upper edge and size of the box. */
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly leader: readonly Point[];
}

export const noteColumn = {
  wide: { left: 712, width: 186, elbow: 688, gap: 9 },
  narrow: { left: 336, width: 20, elbow: 318, gap: 2 },
};
// Fields in two lines below one another stay 24 px apart, so that each can be hit.
const HEAD = { line: 25, sign: 7.1 };
const DETAIL = { line: 23, sign: 6.5 };
const LETTER = 20;

/** Signs that a field in a note takes beyond its plain number. */
const FIELD_ROOM = 1;

interface Anchored {
  readonly note: Note;
  readonly at: Point;
}

interface NoteSheet {
  readonly variant: Variant;
  readonly height: number;
}

/** Notes at the right, each as near to the level of what it names as the others let it; no two leaders cross. */
export function placeNotes(
  input: SectionInput,
  notes: readonly Note[],
  view: View,
  height: number,
): readonly PlacedNote[] {
  const sheet = { variant: view.variant, height };
  let order: readonly Anchored[] = notes
    .map((note) => ({ note, at: view.place(note.anchor) }))
    .sort((a, b) => a.at.y - b.at.y);
  let placed = inOrder(input, order, sheet);
  // Each exchange straightens one pair; more than all pairs cannot be needed.
  for (let turn = 0; turn < order.length ** 2; turn += 1) {
    const crossing = firstCrossing(placed);
    if (crossing === undefined) break;
    order = exchanged(order, crossing);
    placed = inOrder(input, order, sheet);
  }
  return placed;
}

/** The same row with one place and the next exchanged. */
function exchanged<T>(row: readonly T[], place: number): readonly T[] {
  return [...row.slice(0, place), ...row.slice(place, place + 2).reverse(), ...row.slice(place + 2)];
}

function inOrder(
  input: SectionInput,
  anchored: readonly Anchored[],
  { variant, height }: NoteSheet,
): readonly PlacedNote[] {
  const column = noteColumn[variant];
  const first = variant === 'wide' ? HEAD.line / 2 : LETTER / 2;
  const sizes = anchored.map(({ note }) => noteHeight(input, note, variant));
  const middles = spread(
    anchored.map(({ at }, index) => ({
      ideal: at.y - first + (sizes[index] ?? 0) / 2,
      size: sizes[index] ?? 0,
    })),
    { from: 2, to: height - 2, gap: column.gap },
  );
  return anchored.map(({ note, at }, index) => {
    const own = sizes[index] ?? 0;
    const top = (middles[index] ?? 0) - own / 2;
    const y = top + first;
    return {
      note,
      letter: String.fromCharCode(97 + index),
      left: column.left,
      y,
      top,
      width: column.width,
      height: own,
      leader: [at, point(column.elbow, y), point(column.left - 6, y)],
    };
  });
}

/** Place of the first leader that crosses the one below it. */
function firstCrossing(placed: readonly PlacedNote[]): number | undefined {
  const index = placed.findIndex((each, place) => {
    const below = placed[place + 1];
    return below !== undefined && leadersCross(each.leader, below.leader);
  });
  return index < 0 ? undefined : index;
}

/** Two leaders whose notes are in order cross when, where both run, the upper one starts lower. */
export function leadersCross(upper: readonly Point[], lower: readonly Point[]): boolean {
  const [a, elbowA] = upper;
  const [b, elbowB] = lower;
  if (!a || !b || !elbowA || !elbowB) return false;
  const start = Math.max(a.x, b.x);
  return levelAt(a, elbowA, start) > levelAt(b, elbowB, start);
}

function levelAt(from: Point, to: Point, x: number): number {
  return from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x);
}

/** Height that all notes take at least. */
export function notesHeight(input: SectionInput, notes: readonly Note[], variant: Variant): number {
  const gap = noteColumn[variant].gap;
  return notes.reduce((sum, note) => sum + noteHeight(input, note, variant) + gap, 4 - gap);
}

function noteHeight(input: SectionInput, note: Note, variant: Variant): number {
  if (variant === 'narrow') return LETTER;
  const lines = (pieces: readonly NotePiece[], sign: number) =>
    pieces.length === 0 ? 0 : Math.ceil((pieceSigns(input, pieces) * sign) / noteColumn.wide.width);
  return Math.max(1, lines(note.head, HEAD.sign)) * HEAD.line + lines(note.detail, DETAIL.sign) * DETAIL.line;
}

function pieceSigns(input: SectionInput, pieces: readonly NotePiece[]): number {
  return pieces
    .map((piece) =>
      typeof piece === 'string' ? piece.length : plainNumber(input, piece.value).length + FIELD_ROOM,
    )
    .reduce((sum, signs) => sum + signs, 0);
}
