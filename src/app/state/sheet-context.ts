import { createContext, useContext } from 'react';
import type { JointDocument } from '../../storage/document.ts';
import type { Edit } from './edit.ts';
import type { Findings } from './findings.ts';
import type { Sheet } from './sheet.ts';

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

/** The sheet and what a person can do with it. */
export interface SheetHandle extends SheetActions {
  readonly sheet: Sheet;
  /** The one document, valid at all times. */
  readonly document: JointDocument;
}

export const SheetActionsContext = createContext<SheetActions | null>(null);
export const SheetContext = createContext<SheetHandle | null>(null);
export const FindingsContext = createContext<Findings | null>(null);

export function useSheet(): SheetHandle {
  const handle = useContext(SheetContext);
  if (handle === null) throw new Error('A part of the sheet stands outside of SheetProvider.');
  return handle;
}

/** What can be done with the sheet, the same for the life of the page: nothing is drawn anew when the sheet changes. */
export function useSheetActions(): SheetActions {
  const actions = useContext(SheetActionsContext);
  if (actions === null) throw new Error('A part of the sheet stands outside of SheetProvider.');
  return actions;
}

/** All that follows from the document. */
export function useFindings(): Findings {
  const findings = useContext(FindingsContext);
  if (findings === null) throw new Error('A part of the sheet stands outside of FindingsProvider.');
  return findings;
}
