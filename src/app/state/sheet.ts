import type { JointDocument } from '../../storage/document.ts';
import type { Refusal } from '../../storage/refusal.ts';
import type { Admit } from './admitted.ts';
import { type Edit, withEdits } from './edit.ts';
import { type Journal, journalOf, record, redo, undo } from './journal.ts';
import { keepingParts } from './keeping-parts.ts';

/** Edits of one field that the door has not taken, and why. */
export interface PendingEdit {
  readonly edits: readonly Edit[];
  readonly refusals: readonly Refusal[];
}

/** The state of the page: one document, valid at all times, and what was typed beside it. */
export interface Sheet {
  readonly journal: Journal<JointDocument>;
  /** By the key of the field that was typed into. */
  readonly pending: ReadonlyMap<string, PendingEdit>;
  /** Fields whose text is no value at all, by key. */
  readonly unread: ReadonlySet<string>;
  /** Grows when the document is replaced as a whole, so that typed text goes with the old one. */
  readonly epoch: number;
  /** Grows for a field, by key, when what it shows was replaced from another place. */
  readonly renewals: ReadonlyMap<string, number>;
}

export type SheetAction =
  /** at: milliseconds of any clock. */
  | {
      readonly type: 'edit';
      readonly key: string;
      readonly edits: readonly Edit[];
      readonly at: number;
      readonly admit: Admit;
    }
  | { readonly type: 'give-up'; readonly key: string }
  | { readonly type: 'text-unread'; readonly key: string; readonly unread: boolean }
  | { readonly type: 'open'; readonly document: JointDocument }
  | { readonly type: 'undo' }
  | { readonly type: 'redo' };

/**
 * One value may be asked for in two places: on the drawing and in the list. The key of a field is its path and, after
 * an @, its place, so that what was typed and refused is shown where it was typed.
 */
export const fieldKey = (path: string, place: string): string => `${path}@${place}`;
export const pathOfField = (key: string): string => key.split('@')[0] ?? key;

const NONE_PENDING: ReadonlyMap<string, PendingEdit> = new Map();
const NONE_UNREAD: ReadonlySet<string> = new Set();

export const sheetOf = (document: JointDocument): Sheet => ({
  journal: journalOf(document),
  pending: NONE_PENDING,
  unread: NONE_UNREAD,
  epoch: 0,
  renewals: new Map(),
});

export function sheetReducer(sheet: Sheet, action: SheetAction): Sheet {
  switch (action.type) {
    case 'edit':
      return edited(sheet, action);
    case 'give-up':
      return { ...sheet, pending: without(sheet.pending, action.key) };
    case 'text-unread':
      return withUnread(sheet, action.key, action.unread);
    case 'open':
      return replacedBy(sheet, record(sheet.journal, action.document, { key: '', at: 0 }));
    case 'undo':
      return replacedBy(sheet, undo(sheet.journal));
    case 'redo':
      return replacedBy(sheet, redo(sheet.journal));
  }
}

const replacedBy = (sheet: Sheet, journal: Journal<JointDocument>): Sheet => ({
  journal,
  pending: NONE_PENDING,
  unread: NONE_UNREAD,
  epoch: sheet.epoch + 1,
  renewals: sheet.renewals,
});

function without(pending: Sheet['pending'], ...keys: readonly string[]): Sheet['pending'] {
  return new Map([...pending].filter(([key]) => !keys.includes(key)));
}

function withUnread(sheet: Sheet, key: string, isUnread: boolean): Sheet {
  if (sheet.unread.has(key) === isUnread) return sheet;
  const unread = new Set(sheet.unread);
  if (isUnread) unread.add(key);
  else unread.delete(key);
  return { ...sheet, unread };
}

type EditAction = Extract<SheetAction, { type: 'edit' }>;

/**
 * Takes an edit together with every pending one, else with each single pending one, else alone: values that are only
 * valid together, such as knurl and pilot typed the wrong way round, go in together.
 */
function edited(before: Sheet, { key, edits, at, admit }: EditAction): Sheet {
  const twins = [...before.pending.keys()].filter((other) => pathOfField(other) === pathOfField(key));
  const sheet = renewed(
    before,
    twins.filter((other) => other !== key),
  );
  const others = [...without(sheet.pending, ...twins)];
  const companies = [...(others.length > 1 ? [others] : []), ...others.map((one) => [one]), []];
  const { present } = sheet.journal;
  let refusals: readonly Refusal[] = [];
  for (const company of companies) {
    const all = [...company.flatMap(([, pending]) => pending.edits), ...edits];
    const admitted = admit(withEdits(present, all));
    if (admitted.kind === 'admitted') {
      const rest = without(sheet.pending, ...twins, ...company.map(([name]) => name));
      return taken(sheet, admitted.document, { key, at, rest, admit });
    }
    refusals = admitted.refusals;
  }
  // The last ones are those of the edit alone.
  return { ...sheet, pending: new Map([...others, [key, { edits, refusals }]]) };
}

function renewed(sheet: Sheet, keys: readonly string[]): Sheet {
  if (keys.length === 0) return sheet;
  const grown = keys.map((key) => [key, (sheet.renewals.get(key) ?? 0) + 1] as const);
  return { ...sheet, renewals: new Map([...sheet.renewals, ...grown]) };
}

function taken(
  sheet: Sheet,
  admitted: JointDocument,
  { key, at, rest, admit }: Pick<EditAction, 'key' | 'at' | 'admit'> & { readonly rest: Sheet['pending'] },
): Sheet {
  const { present } = sheet.journal;
  const document = keepingParts(present, admitted);
  const same = document === present;
  const journal = same ? sheet.journal : record(sheet.journal, document, { key, at });
  return { ...sheet, journal, pending: same ? rest : asked(rest, document, admit) };
}

/** Pending edits with their reasons found anew, against the document as it has become. */
function asked(pending: Sheet['pending'], document: JointDocument, admit: Admit): Sheet['pending'] {
  return new Map(
    [...pending].map(([key, { edits, refusals }]) => {
      const admitted = admit(withEdits(document, edits));
      return [key, { edits, refusals: admitted.kind === 'refused' ? admitted.refusals : refusals }];
    }),
  );
}
