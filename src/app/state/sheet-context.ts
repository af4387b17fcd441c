import { createContext, useContext, useSyncExternalStore } from 'react';
import type { JointDocument } from '../../storage/document.ts';
import type { Findings } from './findings.ts';
import type { Sheet } from './sheet.ts';
import type { SheetActions, SheetStore } from './sheet-store.ts';

/** The sheet and what a person can do with it. */
export interface SheetHandle extends SheetActions {
  readonly sheet: Sheet;
  /** The one document, valid at all times. */
  readonly document: JointDocument;
}

export const SheetContext = createContext<SheetStore | null>(null);
/** Findings that stand in for the latest ones, in parts that follow an edit later. */
export const FindingsContext = createContext<Findings | null>(null);

function useStore(): SheetStore {
  const store = useContext(SheetContext);
  if (store === null) throw new Error('A part of the sheet stands outside of SheetProvider.');
  return store;
}

/** What can be done with the sheet; always the same, so that nothing is drawn anew for it. */
export const useSheetActions = (): SheetActions => useStore().actions;

/** A part of the sheet: drawn anew when it becomes another value. */
export function useSheetValue<Value>(of: (sheet: Sheet) => Value): Value {
  const { subscribe, sheet } = useStore();
  return useSyncExternalStore(subscribe, () => of(sheet()));
}

export function useSheet(): SheetHandle {
  const { subscribe, sheet: current, actions } = useStore();
  const sheet = useSyncExternalStore(subscribe, current);
  return { ...actions, sheet, document: sheet.journal.present };
}

/** The document as it is when something is pressed; a part that asks for it only then is not drawn anew for it. */
export function useDocumentAtPress(): () => JointDocument {
  const { sheet } = useStore();
  return () => sheet().journal.present;
}

/** All that follows from the document. */
export const useFindings = (): Findings => useFindingsValue((findings) => findings);

/** A part of what follows from the document: drawn anew when it becomes another value. */
export function useFindingsValue<Value>(of: (findings: Findings) => Value): Value {
  const given = useContext(FindingsContext);
  const { subscribe, findings } = useStore();
  return useSyncExternalStore(subscribe, () => of(given ?? findings()));
}
