import { CHANCE_MEANINGS } from './chance-meanings.ts';
import { COUPONS_MEANINGS } from './coupons-meanings.ts';
import { HOLE_MEANINGS } from './hole-meanings.ts';
import { INSERT_MEANINGS } from './insert-meanings.ts';
import { LIMITS_MEANINGS } from './limits-meanings.ts';
import { PRINTED_PART_MEANINGS } from './printed-part-meanings.ts';
import { PRINTER_MEANINGS } from './printer-meanings.ts';
import { SCREW_MEANINGS } from './screw-meanings.ts';
import { SERVICE_MEANINGS } from './service-meanings.ts';
import { TESTS_MEANINGS } from './tests-meanings.ts';
import { TORQUE_MEANINGS } from './torque-meanings.ts';

/**
 * What a symbol stands for. Where two quantities share a symbol, the key names the unit ("T N·mm"), the symbol of
 * the quantity it goes into ("s@n") or the source of its own derivation ("q@own-model"); these come first.
 */
export const MEANINGS: Readonly<Record<string, string>> = {
  ...INSERT_MEANINGS,
  ...HOLE_MEANINGS,
  ...PRINTER_MEANINGS,
  ...PRINTED_PART_MEANINGS,
  ...LIMITS_MEANINGS,
  ...SCREW_MEANINGS,
  ...TORQUE_MEANINGS,
  ...SERVICE_MEANINGS,
  ...CHANCE_MEANINGS,
  ...COUPONS_MEANINGS,
  ...TESTS_MEANINGS,
};
