import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import { mouthChamfer } from './boss.ts';

/** Flare of a first layer a side where nobody has measured it, mm (usual slicer defaults 0.1 to 0.2, from memory). */
export const USUAL_FLARE = 0.2;
/** Layers over which a flare dies out where nobody has looked, [-] (estimate). */
export const USUAL_FLARED_LAYERS = 1;
/** Room of a chamfer over the flare, a side, mm. */
const ROOM = 0.1;

/** How the first layers spread at the bed. */
export interface FirstLayerFlare {
  /** A side, of the very first layer, mm, ≥ 0. */
  readonly perSide: number;
  /** Layers over which it dies out evenly, a whole number ≥ 1. */
  readonly layers: number;
  /** Layer height, mm. */
  readonly layerHeight: number;
}

/**
 * What an uncompensated first layer takes from the diameter of a hole whose mouth lies on the bed.
 *
 *     ΔD_0 = 2 · c0
 *
 * @param flare - c0 a side [mm], ≥ 0
 * @returns ΔD_0 [mm]
 * @source slicer-settings-note flare a side
 * @example 0.25 mm a side takes 0.5 mm
 */
export function mouthLoss({ perSide }: Pick<FirstLayerFlare, 'perSide'>): Derived {
  return {
    symbol: 'Δ_0',
    value: 2 * perSide,
    unit: 'mm',
    formula: '2 · c_0',
    entries: [entry('c_0', perSide, 'mm')],
    source: 'slicer-settings-note',
    standing: 'estimate',
  };
}

/**
 * Leg of the 45° chamfer that clears the first layers' flare at a mouth on the bed.
 *
 *     c = max(0.5 mm, max(c0, c0/n + (n − 1)·h) + 0.1 mm)        flare of layer i: c0 · (1 − i/n), i = 0 … n − 1
 *
 * A layer i·h above the bed has c − i·h of room from the chamfer; both fall evenly, so the first or the last flared layer
 * decides. Not below the chamfer of a free mouth. With the flare compensated in the slicer the free mouth's serves.
 *
 * @param flare - c0 a side [mm], ≥ 0; layers n [-], a whole number ≥ 1; layer height h [mm]
 * @returns c [mm]
 * @source slicer-settings-note how a flare dies out
 * @source own-model chamfer of c0 + 0.1 mm over it
 * @example c0 0.25 mm over 3 layers of 0.2 mm needs 0.583 mm
 */
export function bedMouthChamfer({ perSide, layers, layerHeight }: FirstLayerFlare): Derived {
  const free = mouthChamfer();
  const flared = Math.max(perSide, perSide / layers + (layers - 1) * layerHeight);
  return {
    symbol: 'c',
    value: Math.max(free.value, flared + ROOM),
    unit: 'mm',
    formula: 'max(c_f, max(c_0, c_0/n_0 + (n_0 − 1) · h) + 0.1 mm)',
    entries: [
      { ...entryFrom(free), symbol: 'c_f' },
      entry('c_0', perSide, 'mm'),
      entry('n_0', layers, '-'),
      entry('h', layerHeight, 'mm'),
    ],
    source: 'slicer-settings-note',
    standing: 'estimate',
  };
}
