/** A ring pressed from inside, or onto a shaft; mm and MPa. */
export interface Ring {
  readonly outerDiameter: number;
  readonly modulus: number;
  readonly poissonRatio: number;
}

/** A shaft, hollow or not (hole 0); mm and MPa. */
export interface Shaft {
  readonly holeDiameter: number;
  readonly modulus: number;
  readonly poissonRatio: number;
}

/**
 * Hoop stress at the bore of a thick ring over the pressure in it.
 *
 *     σ/p = (Do² + D²)/(Do² − D²)
 *
 * @param outerDiameter - Do [mm], above D
 * @param innerDiameter - D [mm], > 0
 * @returns σ/p [-], > 1
 * @source elasticity thick cylinder
 * @example Do 75, D 50 mm gives 2.6
 */
export const hoopPerPressure = (outerDiameter: number, innerDiameter: number): number =>
  (outerDiameter ** 2 + innerDiameter ** 2) / (outerDiameter ** 2 - innerDiameter ** 2);

/**
 * Pressure between a ring and a shaft that is too large for it.
 *
 *     p = δ/D/[(κo + νo)/Eo + (κi − νi)/Ei]        κo = (Do² + D²)/(Do² − D²), κi = (D² + di²)/(D² − di²)
 *
 * Elastic, plane stress, no end effects. A rigid shaft drops the second term.
 *
 * @param fit - diametral interference δ [mm], diameter D of the joint [mm], ring, and shaft where it is not rigid
 * @returns p [MPa]
 * @source shigley Eq. 3-56
 * @example steel, δ 0.02, D 50, di 25, Do 75 mm gives 19.41 MPa
 */
export function pressFitPressureOf(fit: {
  readonly diametralInterference: number;
  readonly diameter: number;
  readonly ring: Ring;
  readonly shaft?: Shaft;
}): number {
  const { diametralInterference, diameter, ring, shaft } = fit;
  const ringGives = (hoopPerPressure(ring.outerDiameter, diameter) + ring.poissonRatio) / ring.modulus;
  const shaftGives = shaft
    ? (hoopPerPressure(diameter, shaft.holeDiameter) - shaft.poissonRatio) / shaft.modulus
    : 0;
  return diametralInterference / diameter / (ringGives + shaftGives);
}
