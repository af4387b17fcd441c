import { sharesOf } from '../host/little-known.ts';
import { carefulEntry, type Derived, entry, entryBy, entryFrom } from '../sources/derived.ts';
import { characteristicOf, UNTESTED } from './bond.ts';
import { lessCertain } from './less-certain.ts';
import { ringDiameter } from './ring-diameter.ts';
import type { InsertRule, Situation } from './situation.ts';
import { hoopPerPressure, pressFitPressureOf } from './thick-ring.ts';

/** Radial over axial force on a knurl whose flanks stand at 45° (profile angle 90°, from memory), [-]. */
const WEDGE = 1;
/** Share of the bite that spreads the ring: half of the knurl's section is valley. */
const SPREADING_SHARE = 0.5;

/**
 * Hoop stress that a cold-driven knurl would set up in an elastic ring.
 *
 *     σ = E · (z/2)/(Dk/2) · κ/(κ + ν)        κ = (Do² + Dk²)/(Do² − Dk²)
 *
 * Lamé's thick ring round a stiff insert whose radius is half the bite too large. Beyond the hoop strength the ring
 * cracks or yields: the stress tells which, not how far.
 *
 * @param situation - modulus E [MPa], Poisson's ratio ν [-], bite z, knurl Dk, ring Do [mm]
 * @returns σ [MPa], short-term
 * @source elasticity thick cylinder, stiff shaft
 */
export function coldSettingHoopStress(situation: Situation): Derived {
  const ring = ringDiameter(situation);
  const knurl = situation.insert.knurlDiameter.estimate;
  const { modulusInPlane, poissonRatio } = situation.material;
  const bitten = [entry('E', modulusInPlane.value, 'MPa'), entryFrom(situation.bite), entryFrom(knurl)];
  const interference = 2 * SPREADING_SHARE * situation.bite.value;
  if (ring.value <= knurl.value) {
    return {
      symbol: 'σ_set',
      value: (modulusInPlane.value * interference) / knurl.value,
      unit: 'MPa',
      formula: 'E · (z/2)/(D_k/2), where no ring is left',
      entries: [...bitten, entryFrom(ring)],
      source: 'elasticity',
      standing: 'estimate',
    };
  }
  const kappa = hoopPerPressure(ring.value, knurl.value);
  const pressure = pressFitPressureOf({
    diametralInterference: interference,
    diameter: knurl.value,
    ring: {
      outerDiameter: ring.value,
      modulus: modulusInPlane.value,
      poissonRatio: poissonRatio.value,
    },
  });
  return {
    symbol: 'σ_set',
    value: kappa * pressure,
    unit: 'MPa',
    formula: 'E · (z/2)/(D_k/2) · κ/(κ + ν)',
    entries: [
      ...bitten,
      entryBy('κ', kappa, '-', (steps) => steps.ringRatio(ring, knurl)),
      entry('ν', poissonRatio.value, '-'),
    ],
    source: 'elasticity',
    standing: 'estimate',
  };
}

/**
 * Share of the hoop strength that a cold-set insert goes on using after it has crept.
 *
 *     q = min(1, σset/σh) · E(1000 h)/E        0 for a heat-set insert
 *
 * The ring cannot carry more than its strength; what it carries relaxes. Of a little known creep ratio the high end
 * counts here: the less it relaxes, the more stays locked in.
 *
 * @param situation - setting method, hoop stress on setting and hoop strength [MPa]
 * @returns q [-], 0 … below 1
 * @source own-model locked-in hoop stress
 */
export function lockedInShare(situation: Situation): Derived {
  if (situation.setting === 'heat-set') return NOTHING_LOCKED_IN;
  const relaxed = carefulEntry('r_1000', sharesOf(situation.material.creepRatio1000h, 'high'), '-');
  const stress = coldSettingHoopStress(situation);
  const { hoop } = situation.strengths;
  return {
    symbol: 'q',
    value: Math.min(1, stress.value / hoop.value) * relaxed.value,
    unit: '-',
    formula: 'min(1, σ_set/σ_h) · r_1000',
    entries: [entryFrom(stress), entryFrom(hoop), relaxed],
    source: 'own-model',
    standing: 'estimate',
  };
}

const NOTHING_LOCKED_IN: Derived = {
  symbol: 'q',
  value: 0,
  unit: '-',
  formula: '0, melted in',
  entries: [],
  source: 'own-model',
  standing: 'estimate',
};

/**
 * Axial force at which the knurl's flanks split the boss.
 *
 *     F = (1 − q) · σh · (Do² − Dk²)/(Do² + Dk²) · π · Dk · Lk/w
 *
 * An axial force on flanks at 45° presses outward with the same force (w = 1): Lamé's thick ring at its hoop
 * strength. The whole force is put on the flanks, on the careful side: grooves and remelted plastic take a part
 * without wedging.
 *
 * @param situation - hoop strength σh [MPa], ring Do, knurl Dk and Lk [mm], locked-in share q [-]
 * @returns median F [N]
 * @source elasticity thick cylinder
 * @source own-model wedge of the knurl
 */
export function bossSplitForce(situation: Situation): Derived {
  const ring = ringDiameter(situation);
  const locked = lockedInShare(situation);
  const knurl = situation.insert.knurlDiameter.estimate;
  const knurled = situation.insert.knurledLength.estimate;
  const { hoop } = situation.strengths;
  if (ring.value <= knurl.value) return nothingToSplit(ring, knurl);
  const pressure = hoop.value / hoopPerPressure(ring.value, knurl.value);
  return {
    symbol: 'F_bs',
    value: ((1 - locked.value) * pressure * Math.PI * knurl.value * knurled.value) / WEDGE,
    unit: 'N',
    formula: '(1 − q) · σ_h · (D_o² − D_k²)/(D_o² + D_k²) · π · D_k · L_k/w',
    entries: [
      entryFrom(locked),
      entryFrom(hoop),
      entryFrom(ring),
      entryFrom(knurl),
      entryFrom(knurled),
      entry('w', WEDGE, '-'),
    ],
    source: 'own-model',
    standing: 'estimate',
  };
}

const nothingToSplit = (ring: Derived, knurl: Derived): Derived => ({
  symbol: 'F_bs',
  value: 0,
  unit: 'N',
  formula: '0, where no ring is left',
  entries: [entryFrom(ring), entryFrom(knurl)],
  source: 'own-model',
  standing: 'estimate',
});

/** Boss split: wherever the plastic carries an axial force from the knurl. */
export const bossSplit: InsertRule = {
  of: 'insert',
  mode: 'boss-split',
  path: (seat) => (seat === 'on-insert' ? 'pull' : seat === 'far-side' ? 'none' : 'clamp'),
  capacity: (situation) => {
    const median = bossSplitForce(situation);
    return {
      median,
      characteristic: characteristicOf(median, lessCertain(UNTESTED, situation.strengths.hoop)),
    };
  },
};
