import { useMemo } from 'react';
import type { SetupEvidence } from '../../../core/bench/evidence.ts';
import type { NamesOfWays } from '../../../wording/ways.ts';
import { insertName } from '../../joint/drawer/insert-name.ts';
import { useSheetValue } from '../../state/sheet-context.ts';

/** The name of an insert of which a coupon speaks, by its id. */
export const nameOfTested =
  ({ findings }: SetupEvidence) =>
  (insertId: string): string => {
    const insert = findings.find(({ test }) => test.insertId === insertId)?.test.insert;
    return insert === undefined ? insertId : insertName(insert);
  };

/** Names of the document’s printers. */
export function useNamesOfWays(): NamesOfWays {
  const printers = useSheetValue(({ journal }) => journal.present.printers);
  return useMemo(
    () => ({ printer: (wanted) => printers.find(({ id }) => id === wanted)?.name ?? wanted }),
    [printers],
  );
}
