import { type ReactNode, useMemo, useReducer } from 'react';
import type { JointDocument } from '../../storage/document.ts';
import type { Admit } from './admitted.ts';
import { openDoor, openedDoor } from './door.ts';
import { findingsOf } from './findings.ts';
import { sheetOf, sheetReducer } from './sheet.ts';
import {
  FindingsContext,
  type SheetActions,
  SheetActionsContext,
  SheetContext,
  type SheetHandle,
  useSheet,
} from './sheet-context.ts';

/** Holds the one document of the page. */
export function SheetProvider({
  first,
  children,
}: {
  readonly first: JointDocument;
  readonly children: ReactNode;
}) {
  const [sheet, dispatch] = useReducer(sheetReducer, first, sheetOf);
  const actions = useMemo<SheetActions>(
    () => ({
      edit: (key, ...edits) => {
        const take = (admit: Admit) => dispatch({ type: 'edit', key, edits, at: Date.now(), admit });
        const admit = openedDoor();
        if (admit) take(admit);
        else void openDoor().then(take);
      },
      giveUp: (key) => dispatch({ type: 'give-up', key }),
      tellUnread: (key, unread) => dispatch({ type: 'text-unread', key, unread }),
      open: (document) => dispatch({ type: 'open', document }),
      undo: () => dispatch({ type: 'undo' }),
      redo: () => dispatch({ type: 'redo' }),
    }),
    [],
  );
  const handle = useMemo<SheetHandle>(
    () => ({ sheet, document: sheet.journal.present, ...actions }),
    [sheet, actions],
  );
  return (
    <SheetActionsContext value={actions}>
      <SheetContext value={handle}>{children}</SheetContext>
    </SheetActionsContext>
  );
}

/** Works out what follows from the document, once for the whole page. */
export function FindingsProvider({ children }: { readonly children: ReactNode }) {
  const { document } = useSheet();
  const findings = useMemo(() => findingsOf(document), [document]);
  return <FindingsContext value={findings}>{children}</FindingsContext>;
}
