import type { SetupEvidence } from '../../../core/bench/evidence.ts';
import { insertName } from '../../joint/drawer/insert-name.ts';

/** The name of an insert of which a coupon speaks, by its id. */
export const nameOfTested =
  ({ findings }: SetupEvidence) =>
  (insertId: string): string => {
    const insert = findings.find(({ test }) => test.insertId === insertId)?.test.insert;
    return insert === undefined ? insertId : insertName(insert);
  };
