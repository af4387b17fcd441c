import { sentenceOfRefusal } from '../../wording/refusals.ts';
import type { FieldProblem } from '../fields/field-props.ts';
import { type Edit, withEdits } from '../state/edit.ts';
import { repairOf } from '../state/repairs.ts';
import { fieldKey } from '../state/sheet.ts';
import { useSheetActions, useSheetValue } from '../state/sheet-context.ts';
import { valueIn } from '../state/value-in.ts';

export interface DocumentField {
  /** Changes when the field must forget what was typed. */
  readonly renewal: string;
  readonly value: unknown;
  /** What stands here while the door has not taken it; absent when nothing waits. */
  readonly waiting?: unknown;
  /** Puts a value in; undefined takes an optional key out. Further edits go along with it. */
  readonly take: (value: unknown, ...along: readonly Edit[]) => void;
  readonly problem: FieldProblem | undefined;
  readonly onRefused: (refused: boolean) => void;
  readonly giveUp: () => void;
}

/** One value of the document as a field sees it; place tells the drawing from the list and so on. */
export function useDocumentField(path: string, place: string): DocumentField {
  const { edit, giveUp, tellUnread } = useSheetActions();
  const key = fieldKey(path, place);
  const value = useSheetValue(({ journal }) => valueIn(journal.present, path));
  const renewal = useSheetValue(({ epoch, renewals }) => `${epoch}.${renewals.get(key) ?? 0}`);
  // Only a field that waits looks at the whole sheet.
  const waited = useSheetValue((sheet) => (sheet.pending.has(key) ? sheet : undefined));
  const pending = waited?.pending.get(key);
  const problem = ((): FieldProblem | undefined => {
    if (waited === undefined || pending === undefined) return undefined;
    const message = [...new Set(pending.refusals.map(sentenceOfRefusal))].join(' ');
    const wrong = withEdits(waited.journal.present, pending.edits);
    const repairs = pending.refusals.flatMap(
      (refusal) => repairOf(refusal, (at) => valueIn(wrong, at)) ?? [],
    );
    const [repair] = repairs;
    if (repair === undefined) return { message };
    const apply = () => edit(key, ...pending.edits, ...repair.edits);
    return { message, repair: { label: repair.label, apply } };
  })();
  return {
    renewal,
    value,
    ...(pending ? { waiting: pending.edits.find((one) => one.path === path)?.value } : {}),
    take: (value, ...along) => edit(key, { path, value }, ...along),
    problem,
    onRefused: (refused) => tellUnread(key, refused),
    giveUp: () => giveUp(key),
  };
}
