import { type Derived, type Entry, entryFrom } from '../sources/derived.ts';
import { type BossColumn, columnCompliance } from './bonded-ring.ts';

/** A column below an insert whose values come with their ways. */
export type ColumnEntries = Readonly<Record<keyof BossColumn, Entry>>;

const OWN = { source: 'own-model', standing: 'estimate' } as const;

/**
 * Compliance of a boss below its insert; see columnCompliance.
 *
 * @param column - Db, bore Dt, room under the insert, solid to the base [mm], E [MPa], ν [-]
 * @returns C_c [mm/N]
 * @source own-model column, within 20 % of finite-element solutions (docs/finite-element.md)
 */
export function columnBelow(column: ColumnEntries): Derived {
  const { outerDiameter, boreDiameter, room, solid, modulus, poissonRatio } = column;
  const value = columnCompliance({
    outerDiameter: outerDiameter.value,
    boreDiameter: boreDiameter.value,
    room: room.value,
    solid: solid.value,
    modulus: modulus.value,
    poissonRatio: poissonRatio.value,
  });
  const full = sectionOf('A_0', 'π/4 · D_b²', [outerDiameter], outerDiameter.value ** 2);
  const across = outerDiameter.value ** 2 - boreDiameter.value ** 2;
  const net = sectionOf('A_n', 'π/4 · (D_b² − D_t²)', [outerDiameter, boreDiameter], across);
  return {
    symbol: 'C_c',
    value,
    unit: 'mm/N',
    formula: 'l_room/(E · A_n) + l_held/(M_c · A_0) + (l_solid − l_held)/(E · A_0)',
    entries: [room, modulus, net, heldLength(column), confinedEntry(column), full, solid],
    ...OWN,
  };
}

const sectionOf = (symbol: string, formula: string, entries: readonly Entry[], squares: number): Entry =>
  entryFrom({ symbol, value: (Math.PI / 4) * squares, unit: 'mm²', formula, entries, ...OWN });

const heldLength = ({ solid, outerDiameter }: ColumnEntries): Entry =>
  entryFrom({
    symbol: 'l_held',
    value: Math.min(solid.value, outerDiameter.value / 4),
    unit: 'mm',
    formula: 'min(l_solid, D_b/4)',
    entries: [solid, outerDiameter],
    ...OWN,
  });

/** Modulus of what cannot shrink sideways. */
function confinedEntry({ modulus, poissonRatio }: ColumnEntries): Entry {
  const nu = poissonRatio.value;
  return entryFrom({
    symbol: 'M_c',
    value: (modulus.value * (1 - nu)) / ((1 + nu) * (1 - 2 * nu)),
    unit: 'MPa',
    formula: 'E · (1 − ν)/((1 + ν) · (1 − 2 · ν))',
    entries: [modulus, poissonRatio],
    source: 'elasticity',
    standing: 'estimate',
  });
}
