import type { TestRecord } from '../document.ts';
import { COLUMN_KEYS } from './columns.ts';
import { tableText } from './table.ts';

/**
 * Every test as a table that the import reads back: points for decimals, a column a key. Names of tests are given anew
 * there, and photos stay on the device.
 */
export const testsTable = (tests: readonly TestRecord[]): string =>
  tableText(
    COLUMN_KEYS,
    tests.map((test) => COLUMN_KEYS.map((key) => String(test[key] ?? ''))),
  );
