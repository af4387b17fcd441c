import { useMemo } from 'react';
import { useFindings, useSheet } from './sheet-context.ts';
import { type Staleness, stalenessOf } from './staleness.ts';

/** Which answers on the page are older than what stands in the fields. */
export function useStaleness(): Staleness {
  const { sheet } = useSheet();
  const { shown } = useFindings();
  const shownId = shown?.insert.id;
  return useMemo(() => stalenessOf(sheet, shownId), [sheet, shownId]);
}
