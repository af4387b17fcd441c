import { type ReactNode, useState } from 'react';
import type { JointDocument } from '../../storage/document.ts';
import { SheetContext } from './sheet-context.ts';
import { sheetStore } from './sheet-store.ts';

interface SheetProviderProps {
  readonly first: JointDocument;
  readonly children: ReactNode;
}

/** Holds the one document of the page, and what follows from it. */
export function SheetProvider({ first, children }: SheetProviderProps) {
  const [store] = useState(() => sheetStore(first));
  return <SheetContext value={store}>{children}</SheetContext>;
}
