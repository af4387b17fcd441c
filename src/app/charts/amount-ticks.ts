import type { CoreUnit } from '../../core/sources/derived.ts';
import { forceNumber, torqueNumber } from '../../wording/amount.ts';

/** The number on an axis of loads: N, or N·m for a torque. */
export const tickText = (value: number, unit: CoreUnit): string =>
  unit === 'N·mm' ? torqueNumber(value) : forceNumber(value);
