import type { InsertDimensions } from '../inserts/dimensions.ts';
import { withoutDust } from '../numerics/binary-dust.ts';
import { type Derived, entry, entryFrom } from '../sources/derived.ts';

/** Room left under the insert where nothing else asks for more, mm: the usual L + 1. */
export const LEAST_WELL = 1;
/** Room between screw tip and floor, mm: covers the length tolerance js15 up to 30 mm. */
export const TIP_CLEARANCE = 0.5;
/** Share of the knurl's ring volume that is displaced rather than filled by knurl valleys, [-]. */
const DISPLACED_SHARE = 0.5;
/** Guards a whole number of layers against binary dust, layers. */
const LAYER_DUST = 1e-9;

/**
 * Plastic that the insert displaces.
 *
 *     V = ½ · π/4 · max(0, Dk² − Dt²) · Lk                        bore not below the pilot
 *     V = ½ · π/4 · (Dk² − Dp²) · Lk + π/4 · (Dp² − Dt²) · L      bore below the pilot
 *
 * Half of the knurl's ring is valley; what stands in the way of the pilot gives way over the whole length.
 *
 * @param insert - knurl diameter Dk, pilot diameter Dp, knurled length Lk, length L [mm]
 * @param bore - bore as printed Dt [mm]; the knurl displaces nothing in one as wide as itself
 * @returns V [mm³], ≥ 0
 * @source own-model half of the ring is knurl valley
 * @example Dk 5, Dt 4.3, Lk 3.6 mm gives 9.2 mm³
 */
export function meltVolume(insert: InsertDimensions, bore: Derived): Derived {
  const { knurlDiameter, pilotDiameter, knurledLength, length } = insert;
  const [knurl, pilot] = [knurlDiameter.estimate, pilotDiameter.estimate];
  const belowPilot = bore.value < pilot.value;
  const ring = Math.max(0, knurl.value ** 2 - Math.max(bore.value, pilot.value) ** 2);
  const core = belowPilot ? pilot.value ** 2 - bore.value ** 2 : 0;
  return {
    symbol: 'V',
    value:
      (Math.PI / 4) * (DISPLACED_SHARE * ring * knurledLength.estimate.value + core * length.estimate.value),
    unit: 'mm³',
    formula: belowPilot
      ? '½ · π/4 · (D_k² − D_p²) · L_k + π/4 · (D_p² − D_t²) · L'
      : '½ · π/4 · max(0, D_k² − D_t²) · L_k',
    entries: [
      entryFrom(knurl),
      entryFrom(bore),
      entryFrom(knurledLength.estimate),
      ...(belowPilot ? [entryFrom(pilot), entryFrom(length.estimate)] : []),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}

/**
 * Height that the displaced plastic fills in the bore below the insert.
 *
 *     m = V/(π/4 · Dt²)
 *
 * @param volume - displaced volume V [mm³]
 * @param bore - bore as printed Dt [mm]
 * @returns m [mm]
 * @source own-model all of it goes down
 * @example 9.2 mm³ in a bore of 4.3 mm gives 0.63 mm
 */
export function meltHeight(volume: Derived, bore: Derived): Derived {
  return {
    symbol: 'm',
    value: volume.value / ((Math.PI / 4) * bore.value ** 2),
    unit: 'mm',
    formula: 'V/(π/4 · D_t²)',
    entries: [entryFrom(volume), entryFrom(bore)],
    source: 'own-model',
    standing: 'estimate',
  };
}

/** What a near-side hole must have room for; mm. */
export interface RoomInHole {
  readonly length: Derived;
  readonly sunk: number;
  readonly meltHeight: Derived;
  /** How far the screw's tip stands beyond the insert, > 0; absent where it does not. */
  readonly tip?: Derived;
  readonly layerHeight: number;
}

/**
 * Depth of a hole set from the near side, up to whole layers.
 *
 *     T = sunk + L + max(1 mm, m + q)        q = lo + 0.5 mm, or 0 where the tip lo stays in the insert
 *
 * @param room - insert length L, sunk, melt height m, tip beyond the insert lo or none, layer height [mm]
 * @returns T [mm], a whole number of layers
 * @source trade-practice depth L + 1 mm
 * @source own-model room for melt and screw tip
 * @example L 5, m 0.63 mm, tip inside, layers of 0.2 mm gives 6.0 mm
 */
export function holeDepth(room: RoomInHole): Derived {
  const { length, sunk, meltHeight: melt, tip, layerHeight } = room;
  const tipRoom = tip === undefined ? 0 : tip.value + TIP_CLEARANCE;
  const exact = sunk + length.value + Math.max(LEAST_WELL, melt.value + tipRoom);
  return {
    symbol: 'T',
    value: wholeLayers(exact, layerHeight),
    unit: 'mm',
    formula:
      tip === undefined
        ? '⌈(sunk + L + max(1 mm, m))/h⌉ · h'
        : '⌈(sunk + L + max(1 mm, m + l_o + 0.5 mm))/h⌉ · h',
    entries: [
      entry('sunk', sunk, 'mm'),
      entryFrom(length),
      entryFrom(melt),
      ...(tip === undefined ? [] : [entryFrom(tip)]),
      entry('h', layerHeight, 'mm'),
    ],
    source: 'trade-practice',
    standing: 'common-practice',
  };
}

/**
 * Depth of a hole set from the far side: the insert rests on its shoulder.
 *
 *     T = sunk + L
 *
 * @param room - insert length L [mm], sunk [mm], layer height [mm]
 * @returns T [mm], a whole number of layers
 * @source trade-practice depth L for an insert set from behind
 * @example L 9.5 mm flush in layers of 0.25 mm gives 9.5 mm
 */
export function farSideDepth(room: Pick<RoomInHole, 'length' | 'sunk' | 'layerHeight'>): Derived {
  return {
    symbol: 'T',
    value: wholeLayers(room.sunk + room.length.value, room.layerHeight),
    unit: 'mm',
    formula: '⌈(sunk + L)/h⌉ · h',
    entries: [entry('sunk', room.sunk, 'mm'), entryFrom(room.length), entry('h', room.layerHeight, 'mm')],
    source: 'trade-practice',
    standing: 'common-practice',
  };
}

/** A depth rounded up to whole layers, mm. */
export const wholeLayers = (depth: number, layerHeight: number): number =>
  withoutDust(Math.ceil(depth / layerHeight - LAYER_DUST) * layerHeight);
