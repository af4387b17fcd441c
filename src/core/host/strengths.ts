import { type Derived, entry, entryFrom } from '../sources/derived.ts';
import type { InsertAxis } from './host.ts';
import { type LittleKnownRow, strengthAt } from './little-known.ts';
import type { MaterialValue, PrintedMaterial } from './material.ts';
import { strengthLeft } from './temperature.ts';

/** Shear over tension by distortion energy, 1/√3, [-]. */
const SHEAR_PER_TENSION = 1 / Math.sqrt(3);

/** A strength; of one that is little known with the row that it comes from. */
export interface Strength extends Derived {
  readonly littleKnown?: LittleKnownRow;
}

/** Symbols of the ends of a row. */
const ENDS = {
  shear: { low: 'τ_low', high: 'τ_high' },
  tension: { low: 'σ_low', high: 'σ_high' },
} as const;

/** Row and ends of a little known strength, these scaled; nothing where it is well enough known. */
const doubtOf = (
  row: MaterialValue,
  symbol: string,
  scale: number,
): Pick<Strength, 'range' | 'littleKnown'> =>
  row.lowConfidence === true
    ? {
        range: { low: scale * strengthAt(row, 'low'), high: scale * strengthAt(row, 'high') },
        littleKnown: { row, symbols: { value: symbol, ...(symbol === 'τ_il' ? ENDS.shear : ENDS.tension) } },
      }
    : {};

/** Strengths of the printed part at service temperature, MPa, named for what they do round an insert. */
export interface HostStrengths {
  /** Shear of the remelted plastic that fills the knurl. */
  readonly knurlShear: Strength;
  /** Shear on printed cylinders round the insert. */
  readonly printedShear: Strength;
  /** Tension along the insert's axis. */
  readonly alongAxis: Strength;
  /** Tension round the insert. */
  readonly hoop: Strength;
  readonly compressive: Strength;
}

/**
 * Strengths of a printed material round an insert at service temperature.
 *
 *     τ   = θ · σxy/√3      knurl: a hot insert remelts the layers round itself, whatever the axis
 *     τp  = θ · τ_layers    printed cylinders
 *     σa  = θ · σz or σxy   tension along the axis: across layers when the axis lies along the build
 *     σh  = θ · σxy or σz   hoop: in plane when the axis lies along the build, else layers part
 *     σc  = θ · σ_compr
 *
 * A strength that its row calls little known carries its range with it, or ± 30 % where the row has none. θ is at its
 * careful end, see strengthLeft.
 * A cold-set insert leaves the layers as printed; it uses the same τ with a smaller bond factor.
 *
 * @param material - strengths at 23 °C [MPa]
 * @param axis - insert axis along or across the build direction
 * @param serviceTemperature - T [°C], ≤ softening − 10 K
 * @returns the five strengths [MPa]
 * @source own-model which plane carries what
 * @source von-mises shear over tension
 * @source printed-materials strengths at 23 °C
 */
export function hostStrengths(
  material: PrintedMaterial,
  axis: InsertAxis,
  serviceTemperature: number,
): HostStrengths {
  const theta = strengthLeft(material, serviceTemperature);
  const scaled = (symbol: string, row: MaterialValue, given: string): Strength => ({
    symbol,
    value: theta.value * row.value,
    unit: 'MPa',
    formula: `θ · ${given}`,
    entries: [entryFrom(theta), entry(given, row.value, 'MPa')],
    source: 'printed-materials',
    // Never better than an estimate: the row is somebody else's print.
    standing: 'estimate',
    ...doubtOf(row, given, theta.value),
  });
  const inPlane = material.tensileInPlane;
  const across = material.tensileAcrossLayers;
  const alongBuild = axis === 'along-build';
  return {
    knurlShear: {
      symbol: 'τ',
      value: theta.value * SHEAR_PER_TENSION * inPlane.value,
      unit: 'MPa',
      formula: 'θ · σ_xy/√3',
      entries: [entryFrom(theta), entry('σ_xy', inPlane.value, 'MPa')],
      source: 'own-model',
      standing: 'estimate',
      ...doubtOf(inPlane, 'σ_xy', theta.value * SHEAR_PER_TENSION),
    },
    printedShear: scaled('τ_p', material.shearBetweenLayers, 'τ_il'),
    alongAxis: scaled('σ_a', alongBuild ? across : inPlane, alongBuild ? 'σ_z' : 'σ_xy'),
    hoop: scaled('σ_h', alongBuild ? inPlane : across, alongBuild ? 'σ_xy' : 'σ_z'),
    compressive: scaled('σ_c', material.compressive, 'σ_cb'),
  };
}
