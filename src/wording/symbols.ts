import type { CoreUnit, Derived, Entry } from '../core/sources/derived.ts';

/**
 * What a symbol stands for. Where two quantities share a symbol, the key names the unit ("T N·mm"), the symbol of
 * the quantity it goes into ("s@R_k") or the source of its own derivation ("φ@findley-iso-899"); these come first.
 */
const MEANINGS: Readonly<Record<string, string>> = {
  // Insert
  D_k: 'knurl diameter',
  D_p: 'pilot diameter',
  L: 'length of the insert',
  L_k: 'knurled length',
  x: 'reading',
  u_A: 'scatter of the readings on their mean',
  u_B: 'uncertainty from the caliper’s permissible error',
  'n@D_k': 'number of readings',
  'n@D_p': 'number of readings',
  'n@L': 'number of readings',
  'n@L_k': 'number of readings',
  'u(D_k)': 'standard uncertainty of the knurl diameter',
  'u(D_p)': 'standard uncertainty of the pilot diameter',
  'u(L)': 'standard uncertainty of the length',
  'u(L_k)': 'standard uncertainty of the knurled length',
  // Hole
  D_t: 'bore as printed',
  f: 'fit over the pilot',
  e: 'what the printer adds to the drawn diameter',
  a: 'what the printer adds at 4 mm',
  b: 'change of it with the diameter',
  e_max: 'the most it is taken to be',
  D_CAD: 'hole to draw',
  step: 'step it is rounded to',
  D: 'bore to be expected',
  D_min: 'smallest bore that the pilot drops into',
  D_max: 'largest bore that the knurl still bites in',
  p: 'chance that a bore fits',
  's mm': 'scatter of the bores',
  's@n': 'spacing of the walls',
  z: 'bite of the knurl, a side',
  'k_b -': 'bite factor',
  V: 'melt volume',
  m: 'melt height in the bore',
  T: 'hole depth',
  sunk: 'how far the insert sits below the face',
  q: 'room for the screw’s tip',
  h: 'layer height',
  c: 'leg of the chamfer',
  B: 'floor under the hole',
  H: 'thickness of the printed part',
  D_b: 'boss diameter',
  n: 'walls asked for',
  w: 'line width',
  // Printed part
  't mm': 'wall thickness',
  'n@t': 'number of walls',
  D_w: 'diameter over the walls',
  D_i: 'inner diameter of the boss’s own walls',
  D_o: 'outside diameter that resists splitting',
  t_s: 'thickness of the top skin',
  ρ: 'infill density',
  φ: 'infill strength against solid',
  'φ@findley-iso-899': 'creep factor',
  'φ@F(t)/F_0': 'creep factor',
  θ: 'strength left at service temperature',
  T_s: 'softening temperature',
  'T °C': 'service temperature',
  r_T: 'strength left, as remembered from data',
  r_1000: 'stiffness left after 1,000 hours',
  σ_xy: 'tensile strength in the layers’ plane',
  σ_z: 'tensile strength across the layers',
  σ_a: 'tensile strength along the insert’s axis',
  σ_h: 'tensile strength round the bore',
  σ_c: 'compressive strength',
  τ: 'shear strength of the remelted plastic',
  τ_p: 'shear strength as printed',
  τ_xy: 'shear strength in the layers’ plane',
  τ_z: 'shear strength between layers',
  'E MPa': 'modulus of elasticity',
  κ: 'stiffness ratio of the boss as a thick ring',
  ν: 'Poisson’s ratio',
  'ν@F_M': 'share of the yield strength that is used',
  σ_set: 'hoop stress left by setting',
  'q@F_bs': 'share of the hoop strength used up by setting',
  'q@own-model': 'share of the hoop strength used up by setting',
  'w@F_bs': 'wedge factor of the knurl',
  // Limits
  η: 'bond factor',
  η_hot: 'bond factor of a heat-set insert',
  R: 'median capacity',
  R_k: 'characteristic capacity: 19 of 20 hold it',
  't -': 'Student’s t, 95 %, 4 degrees of freedom',
  's@R_k': 'scatter of an untested set-up, logarithmic',
  F_ks: 'force that shears the knurl',
  F_wp: 'force that pulls the wall plug out',
  F_bt: 'force that tears the boss',
  F_bs: 'force that splits the boss',
  F_hb: 'force that the face under the head bears',
  F_sb: 'force that the face on the insert’s ring bears',
  F_sy: 'force at which the shoulder yields',
  F_sp: 'force that punches the shoulder through',
  F_it: 'force that strips the insert’s thread',
  F_st: 'force that strips the screw’s thread',
  T_out: 'torque that turns the insert',
  A_b: 'section left at the hole’s bottom',
  A_sh: 'shoulder area',
  A_r: 'area of the insert’s ring',
  p_G: 'limiting pressure of the metal',
  τ_b: 'shear strength of the brass',
  // Screw and thread
  d: 'thread diameter',
  P: 'pitch',
  d_2: 'pitch diameter of the screw',
  d_3: 'minor diameter of the screw',
  d_0: 'diameter of the stress area',
  D_1: 'minor diameter of the inner thread',
  d_min: 'smallest major diameter of the screw',
  d_2min: 'smallest pitch diameter of the screw',
  d_3min: 'smallest minor diameter of the screw',
  D_1max: 'largest minor diameter of the inner thread',
  D_2max: 'largest pitch diameter of the inner thread',
  A_s: 'stress area',
  A_Ss: 'shear area of the screw’s thread',
  A_Sn: 'shear area of the insert’s thread',
  'A_Ss/L_E': 'shear area for each millimetre engaged',
  L_E: 'thread engagement',
  L_e: 'engagement at which the screw breaks first',
  J: 'strength ratio of screw and insert',
  R_m: 'tensile strength',
  R_p: 'yield strength of the screw',
  S_p: 'proof stress',
  F_m: 'smallest breaking load of the screw',
  F_p: 'proof load of the screw',
  M_B: 'smallest breaking torque of the screw',
  X: 'share of the strength in torsion',
  d_h: 'clearance hole',
  d_k: 'head diameter',
  d_w: 'bearing diameter of the head',
  A_p: 'area under the head',
  // Torque and clamp force
  F: 'clamp force',
  M_A: 'torque on the screw',
  'M_A/F': 'torque for each newton of clamp force',
  K: 'nut factor',
  μ_G: 'friction in the thread',
  μ_K: 'friction under the head',
  D_Km: 'diameter at which the head rubs',
  'T N·mm': 'torque on the screw',
  F_M: 'clamp force at yield',
  F_Mmax: 'largest clamp force',
  F_Mmin: 'smallest clamp force',
  F_min: 'smallest clamp force',
  F_max: 'largest clamp force',
  α_A: 'tightening factor',
  Γ: 'scatter of the clamp force',
  's@α_A': 'scatter of the clamp force',
  // Stiffness and time
  C: 'share of the pull that the screw takes',
  'k_b N/mm': 'stiffness of the screw',
  k_m: 'stiffness of the clamped parts',
  'k N/mm': 'stiffness of a cone of pressure',
  A_d: 'area of the shank',
  A_t: 'area of the thread',
  l_d: 'length of the shank',
  l_t: 'length of free thread',
  't@k': 'thickness of the cone',
  'D@k': 'diameter of the cone at its top',
  F_i: 'clamp force before the pull',
  P_0: 'pull that opens the joint',
  P_p: 'pull that yields the screw',
  'F(t)/F_0': 'share of the clamp force left',
  'C_p/C_b': 'give of the plastic against that of the screw',
  't h': 'time under load',
  'm@φ': 'creep coefficient',
  'n@φ': 'creep exponent',
};

const READING = /^x_\d+$/;

export interface SymbolPlace {
  readonly unit?: CoreUnit;
  /** Symbol of the quantity whose formula it stands in. */
  readonly within?: string;
  /** Source of its own derivation. */
  readonly source?: string;
}

/** What a symbol stands for, in words; undefined for a symbol without a meaning here. */
export function meaningOfSymbol(symbol: string, place: SymbolPlace = {}): string | undefined {
  if (READING.test(symbol)) return `reading ${symbol.slice(2)}`;
  const keys = [`${symbol}@${place.within}`, `${symbol}@${place.source}`, `${symbol} ${place.unit}`, symbol];
  const key = keys.find((candidate) => Object.hasOwn(MEANINGS, candidate));
  return key === undefined ? undefined : MEANINGS[key];
}

export const meaningOf = (derived: Derived, within?: string): string =>
  meaningOfSymbol(derived.symbol, {
    unit: derived.unit,
    source: derived.source,
    ...(within === undefined ? {} : { within }),
  }) ?? derived.symbol;

export const meaningOfEntry = (entry: Entry, within: Derived): string =>
  meaningOfSymbol(entry.symbol, {
    unit: entry.unit,
    within: within.symbol,
    ...(entry.from === undefined ? {} : { source: entry.from.source }),
  }) ?? entry.symbol;

/** Every number of a derivation that has one of its own, down to what was given; for walking all of them. */
export function* derivationsWithin(derived: Derived): Generator<Derived> {
  yield derived;
  for (const { from } of derived.entries) if (from) yield* derivationsWithin(from);
}
