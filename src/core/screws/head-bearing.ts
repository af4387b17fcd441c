import { type Derived, type Entry, entry, entryAs } from '../sources/derived.ts';
import type { HeadShape } from './screw.ts';

/** The ring on which a head bears; lengths in mm. */
export interface BearingFace {
  readonly shape: HeadShape;
  /** Outer diameter that bears: dw of the head or the washer's outside diameter; countersunk: dk. */
  readonly outerDiameter: number;
  /** Hole that faces the head. */
  readonly holeDiameter: number;
  /** Either with its way, where it was worked out. */
  readonly worked?: { readonly outer?: Entry; readonly hole?: Entry };
}

/** Angle of the cone of a countersunk head against the axis, rad: half of 90°. */
const CONE_HALF_ANGLE = Math.PI / 4;

/**
 * Bearing area as a plain number.
 * @param face - outer diameter dw [mm], hole dh [mm], 0 < dh < dw
 * @returns Ap [mm²]
 * @source vdi-2230 bearing area
 */
export const bearingAreaOf = (face: BearingFace): number =>
  (Math.PI / 4) * (face.outerDiameter ** 2 - face.holeDiameter ** 2);

/**
 * Diameter at which the friction under the head acts, as a plain number.
 * @param face - shape, outer diameter dw [mm], hole dh [mm], 0 < dh < dw
 * @returns DKm [mm]
 * @source vdi-2230 mean bearing diameter
 */
export function frictionDiameterOf(face: BearingFace): number {
  const mean = (face.outerDiameter + face.holeDiameter) / 2;
  return face.shape === 'countersunk' ? mean / Math.sin(CONE_HALF_ANGLE) : mean;
}

/**
 * Area under the head that carries the clamp force, seen along the screw.
 *
 *     Ap = π/4 · (dw² − dh²)
 *
 * A countersunk head bears on a cone: this is its projection, and the clamp force over it is the pressure normal
 * to the cone as long as friction on the cone is left out; its wedging outward is not in it.
 *
 * @param face - outer diameter dw [mm] (countersunk: dk), hole dh [mm], 0 < dh < dw
 * @returns Ap [mm²]
 * @source vdi-2230 bearing area
 * @source iso-10642 countersunk head, 90°
 * @example dw 5.07 mm over a hole of 3.4 mm gives 11.1 mm²
 */
export function bearingArea(face: BearingFace): Derived {
  return {
    symbol: 'A_p',
    value: bearingAreaOf(face),
    unit: 'mm²',
    formula: face.shape === 'countersunk' ? 'π/4 · (d_k² − d_h²)' : 'π/4 · (d_w² − d_h²)',
    entries: faceEntries(face),
    source: 'vdi-2230',
    standing: 'published',
  };
}

/**
 * Diameter that turns the friction force under the head into a torque, half of it being the arm.
 *
 *     DKm = (dw + dh)/2                    flat face
 *     DKm = (dk + dh)/2 / sin 45°          countersunk, 90°
 *
 * On the cone the normal force is the clamp force over sin 45°, which the second form carries into the diameter so
 * that one torque equation serves both; friction's own share of the axial balance is left out.
 *
 * @param face - shape, outer diameter dw [mm] (countersunk: dk), hole dh [mm], 0 < dh < dw
 * @returns DKm [mm]
 * @source vdi-2230 mean bearing diameter
 * @source iso-10642 countersunk head, 90°
 * @source own-model force balance on the cone
 * @example dw 11.63 mm over a hole of 9 mm gives 10.315 mm
 */
export function frictionDiameter(face: BearingFace): Derived {
  const value = frictionDiameterOf(face);
  const entries = faceEntries(face);
  return face.shape === 'countersunk'
    ? {
        symbol: 'D_Km',
        value,
        unit: 'mm',
        formula: '(d_k + d_h)/2/sin 45°',
        entries,
        source: 'own-model',
        standing: 'estimate',
      }
    : {
        symbol: 'D_Km',
        value,
        unit: 'mm',
        formula: '(d_w + d_h)/2',
        entries,
        source: 'vdi-2230',
        standing: 'published',
      };
}

const faceEntries = ({ shape, outerDiameter, holeDiameter, worked }: BearingFace): Derived['entries'] => [
  diameterEntry(shape === 'countersunk' ? 'd_k' : 'd_w', outerDiameter, worked?.outer),
  diameterEntry('d_h', holeDiameter, worked?.hole),
];

const diameterEntry = (symbol: string, diameter: number, worked: Entry | undefined): Entry =>
  worked === undefined ? entry(symbol, diameter, 'mm') : entryAs(symbol, worked);
