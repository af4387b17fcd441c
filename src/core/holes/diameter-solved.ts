import { type Derived, entryFrom } from '../sources/derived.ts';
import { drawnDiameterOf } from './hole-to-draw.ts';
import { curveEntries, type HoleBehaviour } from './print-error.ts';

/**
 * Drawn diameter whose printed bore is the wanted one, unrounded, with what it is solved from; see drawnDiameterOf.
 *
 *     D_x + e(D_x) = Dt
 *
 * @param behaviour - how the printer closes holes
 * @param bore - wanted bore Dt [mm], > 0
 * @returns D_x [mm]
 * @source hole-metrology-note fit, solved for the drawn diameter
 */
export const diameterSolved = (behaviour: HoleBehaviour, bore: Derived): Derived => ({
  symbol: 'D_x',
  value: drawnDiameterOf(behaviour, bore.value),
  unit: 'mm',
  formula: `diameter that comes to ${bore.symbol} with the error it has itself`,
  entries: [entryFrom(bore), ...curveEntries(behaviour)],
  source: 'hole-metrology-note',
  standing: behaviour.standing,
});
