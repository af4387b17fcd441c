/** Plastic bonded round an insert; lengths mm, moduli MPa. */
export interface BondedRing {
  readonly knurlDiameter: number;
  readonly outerDiameter: number;
  readonly length: number;
  readonly modulus: number;
  readonly poissonRatio: number;
}

/** A ring nearer to nothing than this is taken by the limit of the lag factor, where its terms cancel, [-]. */
const THIN_RING = 1e-3;

/** Whether a ring is taken by the limit of the lag factor; p = Do/Dk [-]. */
export const isThin = (p: number): boolean => p - 1 < THIN_RING;

/**
 * Shear modulus of a plastic that is alike in all directions.
 *
 *     G = E/(2 · (1 + ν))
 *
 * @param ring - E [MPa], ν [-]
 * @returns G [MPa]
 * @source elasticity
 */
export const shearModulusOf = (ring: Pick<BondedRing, 'modulus' | 'poissonRatio'>): number =>
  ring.modulus / (2 * (1 + ring.poissonRatio));

/**
 * Diameter that the shear of a pull reaches in a part, mm: fitted to finite-element solutions.
 *
 *     Do = 1.55 · Dk + 1.27 · Lk
 *
 * @param ring - knurl Dk and length Lk [mm], Lk/Dk 0.7 … 2
 * @returns Do [mm]
 * @source own-model fit, docs/finite-element.md
 */
export const pulledReach = (ring: Pick<BondedRing, 'knurlDiameter' | 'length'>): number =>
  1.55 * ring.knurlDiameter + 1.27 * ring.length;

/**
 * Diameter that answers a ring pressed beside the insert, mm: fitted to finite-element solutions.
 *
 *     Do = 1.5 · Dk + 0.5 · Lk
 *
 * @param ring - knurl Dk and length Lk [mm], Lk/Dk 0.7 … 2
 * @returns Do [mm]
 * @source own-model fit, docs/finite-element.md
 */
export const pressedReach = (ring: Pick<BondedRing, 'knurlDiameter' | 'length'>): number =>
  1.5 * ring.knurlDiameter + 0.5 * ring.length;

/**
 * How far the mean of a ring with a free rim lags behind its sheared bore, [-].
 *
 *     Λ = p⁴ · ln p/(p² − 1)² − (3p² − 1)/(4 · (p² − 1))        p = Do/Dk; (p − 1)/3 for a thin ring
 *
 * @param p - Do/Dk [-], > 1
 * @returns Λ [-], > 0
 * @source own-model sheared ring, docs/finite-element.md
 */
export function lagFactor(p: number): number {
  if (isThin(p)) return (p - 1) / 3;
  const q = p ** 2 - 1;
  return (p ** 4 * Math.log(p)) / q ** 2 - (3 * p ** 2 - 1) / (4 * q);
}

/**
 * Compliance of a bonded ring that is held at a rigid rim.
 *
 *     C = ln(Do/Dk)/(2π · G · Lk)
 *
 * @param ring - Dk, Do, Lk [mm], E [MPa], ν [-]
 * @returns C [mm/N]
 * @source elasticity coaxial shear
 */
export const rimHeldCompliance = (ring: BondedRing): number =>
  Math.log(ring.outerDiameter / ring.knurlDiameter) / (2 * Math.PI * shearModulusOf(ring) * ring.length);

/**
 * Compliance of a bonded ring with a free rim that is held at one end.
 *
 *     C = Λ/(2π · G · Lk) · x · coth x        x = Lk · √(2π · G/(Λ · E · A)), A = π/4 · (Do² − Dk²)
 *
 * Short inserts give by Λ/(2πG·Lk) + Lk/(3EA); of long ones only the held end works.
 *
 * @param ring - Dk, Do, Lk [mm], E [MPa], ν [-], Do > Dk
 * @returns C [mm/N]
 * @source own-model shear lag, within 20 % of finite-element solutions (docs/finite-element.md)
 */
export function endHeldCompliance(ring: BondedRing): number {
  const lag = lagFactor(ring.outerDiameter / ring.knurlDiameter);
  const G = shearModulusOf(ring);
  const area = (Math.PI / 4) * (ring.outerDiameter ** 2 - ring.knurlDiameter ** 2);
  const x = ring.length * Math.sqrt((2 * Math.PI * G) / (lag * ring.modulus * area));
  return ((lag / (2 * Math.PI * G * ring.length)) * x) / Math.tanh(x);
}

/** A boss below its insert; lengths mm, moduli MPa. */
export interface BossColumn {
  readonly outerDiameter: number;
  readonly boreDiameter: number;
  /** Hole under the insert. */
  readonly room: number;
  /** Solid from the hole's bottom to the base. */
  readonly solid: number;
  readonly modulus: number;
  readonly poissonRatio: number;
}

/**
 * Compliance of a boss below the insert.
 *
 *     C = a/(E · An) + s1/(M · A0) + (s − s1)/(E · A0)        M = E · (1 − ν)/((1 + ν)(1 − 2ν)), s1 = min(s, Do/4)
 *
 * Next to its base the solid cannot shrink sideways.
 *
 * @param column - Do, bore, room a, solid s [mm], E [MPa], ν [-], below 0.5
 * @returns C [mm/N]
 * @source own-model column, within 20 % of finite-element solutions (docs/finite-element.md)
 */
export function columnCompliance(column: BossColumn): number {
  const { outerDiameter, boreDiameter, room, solid, modulus, poissonRatio: nu } = column;
  const full = (Math.PI / 4) * outerDiameter ** 2;
  const net = full - (Math.PI / 4) * boreDiameter ** 2;
  const confined = (modulus * (1 - nu)) / ((1 + nu) * (1 - 2 * nu));
  const held = Math.min(solid, outerDiameter / 4);
  return room / (modulus * net) + held / (confined * full) + (solid - held) / (modulus * full);
}
