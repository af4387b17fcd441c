import type { JointDocument } from '../../storage/document.ts';
import type { Admit } from './admitted.ts';
import { openDoor, openedDoor } from './door.ts';
import type { Edit } from './edit.ts';
import { type Findings, findingsOf } from './findings.ts';
import { type Sheet, type SheetAction, sheetOf, sheetReducer } from './sheet.ts';

/** What a person can do with the sheet. */
export interface SheetActions {
  /** Puts edits in, or lets them wait with their reason; key: the field they were typed in. */
  readonly edit: (key: string, ...edits: readonly Edit[]) => void;
  readonly giveUp: (key: string) => void;
  /** Tells that the text of a field is no value, or is one again. */
  readonly tellUnread: (key: string, unread: boolean) => void;
  readonly open: (document: JointDocument) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** The state of the page outside of its parts: each part is drawn anew only for what it looks at. */
export interface SheetStore {
  readonly actions: SheetActions;
  readonly sheet: () => Sheet;
  /** What follows from the document, worked out once when it is first asked for. */
  readonly findings: () => Findings;
  /** Tells of each change; the returned function ends it. */
  readonly subscribe: (onChange: () => void) => () => void;
}

/** Whether nothing in a document asks for what comes with the door. */
const isPlain = ({ tests, joint }: JointDocument): boolean =>
  tests.length === 0 && joint.printer === undefined;

export function sheetStore(first: JointDocument): SheetStore {
  let sheet = sheetOf(first);
  let found: { readonly document: JointDocument; readonly findings: Findings } | undefined;
  const listeners = new Set<() => void>();
  const dispatch = (action: SheetAction) => {
    const after = sheetReducer(sheet, action);
    if (after === sheet) return;
    sheet = after;
    for (const tell of listeners) tell();
  };
  return {
    sheet: () => sheet,
    findings: () => {
      const document = sheet.journal.present;
      if (found?.document !== document) found = { document, findings: findingsOf(document) };
      return found.findings;
    },
    subscribe: (onChange) => {
      listeners.add(onChange);
      return () => listeners.delete(onChange);
    },
    actions: {
      edit: (key, ...edits) => {
        const take = (admit: Admit) => dispatch({ type: 'edit', key, edits, at: Date.now(), admit });
        const admit = openedDoor();
        if (admit) take(admit);
        else void openDoor().then(take);
      },
      giveUp: (key) => dispatch({ type: 'give-up', key }),
      tellUnread: (key, unread) => dispatch({ type: 'text-unread', key, unread }),
      open: (document) => {
        const show = () => dispatch({ type: 'open', document });
        if (isPlain(document) || openedDoor()) show();
        else void openDoor().then(show);
      },
      undo: () => dispatch({ type: 'undo' }),
      redo: () => dispatch({ type: 'redo' }),
    },
  };
}
