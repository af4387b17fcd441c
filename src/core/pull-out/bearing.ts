import { bearingArea } from '../screws/head-bearing.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { insertRing } from './insert-ring.ts';
import type { Capacity } from './limit.ts';
import { pressedPlastic } from './pressed-plastic.ts';
import type { InsertRule, JointRule } from './situation.ts';

function pressedMetal(symbol: string, area: Derived, limitingPressure: number): Capacity {
  const force = (name: string): Derived => ({
    symbol: name,
    value: limitingPressure * area.value,
    unit: 'N',
    formula: 'p_G · A_p',
    entries: [entry('p_G', limitingPressure, 'MPa'), entryFrom(area)],
    source: 'vdi-2230',
    standing: 'published',
  });
  return { median: force(symbol), characteristic: force('R_k') };
}

/**
 * Clamped part yields under the head or its washer.
 *
 *     F = pG · Ap metal        F = σc · Ap plastic; for years σc · E(1000 h)/E, or the scatter if that is less
 *
 * A countersunk head's wedging is not in it: a notice says so on printed parts.
 *
 * @source vdi-2230 limiting surface pressure
 * @source printed-materials compressive strength and creep ratio
 */
export const headBearing: JointRule = {
  of: 'joint',
  mode: 'head-bearing',
  path: () => 'clamp',
  capacity: ({ clamped, bearingFace }) => {
    const area = bearingArea(bearingFace);
    const { contact } = clamped;
    return contact.kind === 'metal'
      ? pressedMetal('F_hb', area, contact.limitingPressure)
      : pressedPlastic({ symbol: 'F_hb', area, compressive: contact.compressive, polymer: contact.polymer });
  },
};

/**
 * Printed part yields on the narrow brass ring of the insert.
 *
 *     F = σc · π/4 · (Dk² − dh²)
 *
 * There it settles until it also rests on the plastic next to the insert.
 *
 * @source printed-materials compressive strength and creep ratio
 */
export const seatBearing: InsertRule = {
  of: 'insert',
  mode: 'seat-bearing',
  path: (seat) => (seat === 'on-insert' ? 'clamp' : 'none'),
  capacity: (situation) => {
    const { contact } = situation.clamped;
    if (contact.kind === 'metal') return undefined;
    const { compressive, polymer } = contact;
    return pressedPlastic({ symbol: 'F_sb', area: insertRing('A_p', situation), compressive, polymer });
  },
};
