import { type Derived, type Entry, entryAs, entryFrom } from '../sources/derived.ts';
import {
  type BondedRing,
  endHeldCompliance,
  isThin,
  lagFactor,
  pressedReach,
  pulledReach,
  rimHeldCompliance,
  shearModulusOf,
} from './bonded-ring.ts';

/** A bonded ring whose values come with their ways. */
export type RingEntries = Readonly<Record<keyof BondedRing, Entry>>;

type Elastic = Pick<RingEntries, 'modulus' | 'poissonRatio'>;
type Knurl = Pick<RingEntries, 'knurlDiameter' | 'length'>;

const OWN = { source: 'own-model', standing: 'estimate' } as const;

export const ringOf = (ring: RingEntries): BondedRing => ({
  knurlDiameter: ring.knurlDiameter.value,
  outerDiameter: ring.outerDiameter.value,
  length: ring.length.value,
  modulus: ring.modulus.value,
  poissonRatio: ring.poissonRatio.value,
});

const knurlOf = ({ knurlDiameter, length }: Knurl) => ({
  knurlDiameter: knurlDiameter.value,
  length: length.value,
});

/**
 * Diameter that the shear of a pull reaches in a part; see pulledReach.
 *
 * @param knurl - Dk and Lk [mm]
 * @returns D_reach [mm]
 * @source own-model fit, docs/finite-element.md
 */
export const pulledReachOf = (knurl: Knurl): Derived => ({
  symbol: 'D_reach',
  value: pulledReach(knurlOf(knurl)),
  unit: 'mm',
  formula: '1.55 · D_k + 1.27 · L_k',
  entries: [knurl.knurlDiameter, knurl.length],
  ...OWN,
});

/**
 * Diameter that answers a ring pressed beside the insert; see pressedReach.
 *
 * @param knurl - Dk and Lk [mm]
 * @returns D_reach [mm]
 * @source own-model fit, docs/finite-element.md
 */
export const pressedReachOf = (knurl: Knurl): Derived => ({
  symbol: 'D_reach',
  value: pressedReach(knurlOf(knurl)),
  unit: 'mm',
  formula: '1.5 · D_k + 0.5 · L_k',
  entries: [knurl.knurlDiameter, knurl.length],
  ...OWN,
});

/**
 * Compliance of a bonded ring that is held at a rigid rim; see rimHeldCompliance.
 *
 * @param ring - Dk, De, Lk [mm], E [MPa], ν [-]
 * @returns C_r [mm/N]
 * @source elasticity coaxial shear
 */
export const rimHeld = (ring: RingEntries): Derived => ({
  symbol: 'C_r',
  value: rimHeldCompliance(ringOf(ring)),
  unit: 'mm/N',
  formula: 'ln(D_ring/D_k)/(2π · G · L_k)',
  entries: [...diametersOf(ring), shearEntry(ring), ring.length],
  source: 'elasticity',
  standing: 'estimate',
});

const diametersOf = ({ outerDiameter, knurlDiameter }: RingEntries): readonly Entry[] => [
  entryAs('D_ring', outerDiameter),
  entryAs('D_k', knurlDiameter),
];

/**
 * Compliance of a bonded ring with a free rim that is held at one end; see endHeldCompliance.
 *
 * @param ring - Dk, De, Lk [mm], E [MPa], ν [-]; De ≤ Dk: no wall stands round the knurl
 * @returns C_r [mm/N]; 0 without a wall
 * @source own-model shear lag, within 20 % of finite-element solutions (docs/finite-element.md)
 */
export function endHeld(ring: RingEntries): Derived {
  const { outerDiameter, knurlDiameter } = ring;
  const common = { symbol: 'C_r', unit: 'mm/N', ...OWN } as const;
  if (outerDiameter.value <= knurlDiameter.value) {
    return { ...common, value: 0, formula: '0, no wall stands round the knurl', entries: diametersOf(ring) };
  }
  const lag = entryFrom(lagOf(ring));
  const shear = shearEntry(ring);
  return {
    ...common,
    value: endHeldCompliance(ringOf(ring)),
    formula: 'Λ/(2π · G · L_k) · x/tanh(x)',
    entries: [lag, shear, ring.length, entryFrom(shearLagOf(ring, lag, shear))],
  };
}

/** How far the mean of the ring lags behind its bore. */
function lagOf(ring: RingEntries): Derived {
  const p = ring.outerDiameter.value / ring.knurlDiameter.value;
  const widening: Derived = {
    symbol: 'p',
    value: p,
    unit: '-',
    formula: 'D_ring/D_k',
    entries: diametersOf(ring),
    ...OWN,
  };
  const formula = isThin(p) ? '(p − 1)/3' : 'p^4 · ln(p)/(p² − 1)² − (3 · p² − 1)/(4 · (p² − 1))';
  return { symbol: 'Λ', value: lagFactor(p), unit: '-', formula, entries: [entryFrom(widening)], ...OWN };
}

/** Length of the ring over the length in which its shear dies away. */
function shearLagOf(ring: RingEntries, lag: Entry, shear: Entry): Derived {
  const { outerDiameter, knurlDiameter, length, modulus } = ring;
  const area: Derived = {
    symbol: 'A_r',
    value: (Math.PI / 4) * (outerDiameter.value ** 2 - knurlDiameter.value ** 2),
    unit: 'mm²',
    formula: 'π/4 · (D_ring² − D_k²)',
    entries: diametersOf(ring),
    ...OWN,
  };
  return {
    symbol: 'x',
    value: length.value * Math.sqrt((2 * Math.PI * shear.value) / (lag.value * modulus.value * area.value)),
    unit: '-',
    formula: 'L_k · √(2π · G/(Λ · E · A_r))',
    entries: [length, shear, lag, modulus, entryFrom(area)],
    ...OWN,
  };
}

/** Shear modulus of a plastic that is alike in all directions. */
export const shearEntry = ({ modulus, poissonRatio }: Elastic): Entry =>
  entryFrom({
    symbol: 'G',
    value: shearModulusOf({ modulus: modulus.value, poissonRatio: poissonRatio.value }),
    unit: 'MPa',
    formula: 'E/(2 · (1 + ν))',
    entries: [modulus, poissonRatio],
    source: 'elasticity',
    standing: 'estimate',
  });
