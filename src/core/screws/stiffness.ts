import { type Derived, entry } from '../sources/derived.ts';

/** tan of the half angle of the pressure cone, 30°, [-]. */
const TAN_HALF_ANGLE = Math.tan(Math.PI / 6);

/** The part of a screw that stretches in the grip; mm, mm², MPa. */
export interface StretchedScrew {
  readonly shankArea: number;
  readonly shankLength: number;
  readonly threadArea: number;
  readonly threadLength: number;
  readonly modulus: number;
}

/** One slice of the pressure cone in one material; mm, MPa. */
export interface Frustum {
  readonly thickness: number;
  /** Diameter at the narrow end. */
  readonly faceDiameter: number;
  readonly holeDiameter: number;
  readonly modulus: number;
}

/**
 * Axial stiffness of the screw in the grip: shank and thread in series.
 *
 *     kb = Ad · At · E/(Ad · lt + At · ld)
 *
 * Not in it: the give of the head and of the engaged thread.
 *
 * @param screw - areas Ad, At [mm²], > 0; lengths ld, lt [mm], ≥ 0, not both 0; modulus E [MPa]
 * @returns kb [N/mm]
 * @source shigley ch. 8, bolt stiffness
 * @example Ad 113, At 84.3 mm², ld 10, lt 16 mm, E 207 GPa gives 744 kN/mm
 */
export function screwStiffness(screw: StretchedScrew): Derived {
  const { shankArea: Ad, threadArea: At, shankLength: ld, threadLength: lt, modulus: E } = screw;
  return {
    symbol: 'k_b',
    value: (Ad * At * E) / (Ad * lt + At * ld),
    unit: 'N/mm',
    formula: 'A_d · A_t · E/(A_d · l_t + A_t · l_d)',
    entries: [
      entry('A_d', Ad, 'mm²'),
      entry('A_t', At, 'mm²'),
      entry('l_d', ld, 'mm'),
      entry('l_t', lt, 'mm'),
      entry('E', E, 'MPa'),
    ],
    source: 'shigley',
    standing: 'published',
  };
}

/**
 * Stiffness of the slice of a member that the pressure cone of 30° crosses.
 *
 *     k = tan 30° · π · E · d/ln{[(2·tan 30°·t + D − d) · (D + d)]/[(2·tan 30°·t + D + d) · (D − d)]}
 *
 * Holds while the cone stays inside the member.
 *
 * @param frustum - thickness t [mm], > 0; narrow end D and hole d [mm], 0 < d < D; modulus E [MPa]
 * @returns k [N/mm]
 * @source shigley ch. 8, stiffness of a frustum, Eq. 8-20
 * @example t 22.5, D 18, d 12 mm, E 100 GPa gives 2074 kN/mm
 */
export function frustumStiffness(frustum: Frustum): Derived {
  const { thickness: t, faceDiameter: D, holeDiameter: d, modulus: E } = frustum;
  const widening = 2 * TAN_HALF_ANGLE * t;
  const ratio = ((widening + D - d) * (D + d)) / ((widening + D + d) * (D - d));
  return {
    symbol: 'k',
    value: (TAN_HALF_ANGLE * Math.PI * E * d) / Math.log(ratio),
    unit: 'N/mm',
    formula:
      'tan 30° · π · E · d/ln((2 · tan 30° · t + D − d) · (D + d)/((2 · tan 30° · t + D + d) · (D − d)))',
    entries: [entry('t', t, 'mm'), entry('D', D, 'mm'), entry('d', d, 'mm'), entry('E', E, 'MPa')],
    source: 'shigley',
    standing: 'published',
  };
}

/**
 * Diameter at the wide end of a pressure cone of 30°.
 *
 *     D = dw + 2 · t · tan 30°
 *
 * @param cone - diameter of the loaded face dw [mm], > 0; thickness crossed t [mm], ≥ 0
 * @returns D [mm]
 * @source shigley ch. 8, pressure cone
 * @example dw 18 mm, t 6 mm gives 24.9 mm
 */
export const coneEndDiameter = (cone: {
  readonly faceDiameter: number;
  readonly thickness: number;
}): number => cone.faceDiameter + 2 * cone.thickness * TAN_HALF_ANGLE;

/**
 * Stiffness of members that lie one behind the other.
 *
 *     1/km = Σ 1/ki
 *
 * @param stiffnesses - ki [N/mm], > 0, at least one
 * @returns km [N/mm]
 * @source shigley ch. 8, members in series
 * @example 4470, 52 230 and 2074 kN/mm give 1379 kN/mm
 */
export const stiffnessInSeries = (stiffnesses: readonly number[]): number =>
  1 / stiffnesses.reduce((compliance, k) => compliance + 1 / k, 0);
