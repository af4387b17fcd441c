import { useMemo } from 'react';
import type { Sheet } from './sheet.ts';
import { useFindingsValue, useSheetValue } from './sheet-context.ts';
import { NOTHING_STALE, type Staleness, stalenessOf } from './staleness.ts';

const ifAnyWaits = (sheet: Sheet): Sheet | null =>
  sheet.pending.size + sheet.unread.size > 0 ? sheet : null;

/** Which answers on the page are older than what stands in the fields. */
export function useStaleness(): Staleness {
  const sheet = useSheetValue(ifAnyWaits);
  const shownId = useFindingsValue(({ shown }) => shown?.insert.id);
  return useMemo(() => (sheet === null ? NOTHING_STALE : stalenessOf(sheet, shownId)), [sheet, shownId]);
}
