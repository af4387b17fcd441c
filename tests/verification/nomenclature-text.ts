import { MEANINGS } from '../../src/wording/symbol-meanings.ts';
import { markdownTable } from './markdown-table.ts';
import { type SymbolUse, symbolUses } from './symbol-units.ts';

/** Units that the core's text does not show beside the symbol, or shows for two quantities of one sign. */
const UNITS: Readonly<Record<string, string>> = {
  D_k: 'mm',
  D_p: 'mm',
  L: 'mm',
  x: 'mm',
  'u(D_k)': 'mm',
  'u(D_p)': 'mm',
  'u(L)': 'mm',
  f: 'mm',
  's@n': 'mm',
  'w@F_bs': '-',
  w: 'mm',
  D_o: 'mm',
  σ_z: 'MPa',
  σ_a: 'MPa',
  σ_h: 'MPa',
  σ_c: 'MPa',
  σ_cb: 'MPa',
  τ_p: 'MPa',
  τ_il: 'MPa',
  F_hb: 'N',
  F_sb: 'N',
  F_nb: 'N',
  F_sy: 'N',
  F_it: 'N',
  F_st: 'N',
  d_k: 'mm',
  k_low: 'mm',
  k_high: 'mm',
  d_w: 'mm',
  F_min: 'N',
  F_max: 'N',
  'q@F_bs': '-',
  'q@own-model': '-',
  q: 'mm',
  m: 'mm',
  'm@φ': '-',
  V: 'mm³',
  c: '-',
  'c@R_t': '-',
  R_t: 'N',
  's@R_k': '-',
  's@α_A': '-',
  't@k': 'mm',
  'D@k': 'mm',
  R_j: 'mm',
  G: 'mm',
  s_1: 'mm',
  p_1: '-',
  x_s: 'mm',
  c_f: 'mm',
  e_low: 'mm',
  e_high: 'mm',
  D_j: 'mm',
  t_e: 'mm',
  e_c: 'mm',
  p_c: 'mm',
  r_n: 'mm',
  l_c: 'mm',
  w_c: 'mm',
  h_c: 'mm',
  f_c: 'mm',
  t_f: 'mm',
  D_ro: 'mm',
  D_rim: 'mm',
  w_f: 'mm',
  w_r: 'mm',
  D_mo: 'mm',
  l_n: 'mm',
  R_20: 'N',
  D_af: 'mm',
  T_fa: 'mm',
  x_m: 'mm',
  y_m: 'mm',
  z_m: 'mm',
  a_0: 'mm',
  Δ_a: 'mm',
  b_0: 'mm',
  Δ_b: 'mm',
  Δ_s: 'mm',
  u_a0: 'mm',
  Δ_ua: 'mm',
  u_b0: 'mm',
  Δ_ub: 'mm',
  m_low: '-',
  m_high: '-',
  μ_Gl: '-',
  μ_Gh: '-',
  μ_Kl: '-',
  μ_Kh: '-',
  μ_sl: '-',
  μ_sh: '-',
  R_l: '-',
  R_u: '-',
  R_w: 'N, N·mm',
  η_low: '-',
  R_1: 'N, N·mm',
  m_x: 'N, N·mm',
  s_x: 'N, N·mm',
  x_med: 'N, N·mm',
  x_min: 'N, N·mm',
  x_max: 'N, N·mm',
  m_g: 'N, N·mm',
  x_k: 'N, N·mm',
  m_1: 'N, N·mm',
  m_2: 'N, N·mm',
  Δ_m: 'N, N·mm',
  Δ_low: 'N, N·mm',
  Δ_high: 'N, N·mm',
  h_Δ: 'N, N·mm',
  d_W: 'N, N·mm',
  u_W: 'N, N·mm',
  y_e: 'N, N·mm',
  s_e: 'N, N·mm, -',
  b_v: 'N/mm, N, -',
  b_low: 'N/mm, N, -',
  b_high: 'N/mm, N, -',
  u_bs: 'N/mm, N, -',
  s_Y: 'N, N·mm, -',
  s_V: 'mm, -',
  m_Y: 'N, N·mm',
  b_1: 'N/mm, N',
  b_2: 'N/mm, N',
  v_1: 'mm',
  m_v1: 'mm',
  v_2: 'mm',
  m_v2: 'mm',
  y_m1: 'N, N·mm',
  y_m2: 'N, N·mm',
  y_n1: 'N, N·mm',
  y_n2: 'N, N·mm',
  x_o: 'N, N·mm',
  m_y: '-',
  m_y1: '-',
  m_y2: '-',
  r_g: '-',
  r_low: '-',
  r_high: '-',
  r_m: '-',
  r_mlow: '-',
  r_mhigh: '-',
  t_W: '-',
  ν_W: '-',
  p_W: '-',
  V_low: '-',
  V_high: '-',
  r_N: '-',
  r_L: '-',
  s_y: '-',
  n_g: '-',
  k_t: '-',
  k_n: '-',
  t_k: '-',
  P_g: '-',
  h_x: '-',
  G_x: '-',
  G_c: '-',
  V_x: '-',
};

const QUALIFIED = /^(?<symbol>[^@ ]+)(?:@(?<within>.+)| (?<unit>.+))?$/;

interface Row {
  readonly symbol: string;
  readonly unit: string;
  readonly meaning: string;
  readonly within: readonly string[];
  readonly files: string;
}

function rowOf(key: string, meaning: string, uses: ReadonlyMap<string, SymbolUse>): Row {
  const { symbol = key, within, unit } = QUALIFIED.exec(key)?.groups ?? {};
  const use = uses.get(symbol);
  const found = [...(use?.units ?? [])].toSorted().join(', ');
  return {
    symbol,
    unit: unit ?? UNITS[key] ?? found,
    meaning,
    within: within === undefined ? [] : [within],
    files: [...(use?.files ?? [])].map((file) => file.replace(/\.ts$/, '')).join(', '),
  };
}

/** Every symbol that has a meaning, in the order of the list of meanings; one that means the same in two places once. */
export function nomenclatureRows(root: string): readonly Row[] {
  const uses = symbolUses(root);
  const rows = new Map<string, Row>();
  for (const [key, meaning] of Object.entries(MEANINGS)) {
    const row = rowOf(key, meaning, uses);
    const name = `${row.symbol}: ${meaning}`;
    const earlier = rows.get(name);
    rows.set(name, earlier === undefined ? row : { ...earlier, within: [...earlier.within, ...row.within] });
  }
  return [...rows.values()];
}

/** The text of docs/nomenclature.md. */
export const nomenclatureText = (root: string): string =>
  `${[
    '# Nomenclature',
    'Every symbol that a derivation shows: what it stands for, its unit inside the program, where it is made. An underscore starts a subscript. Where two quantities share a sign, “in” tells them apart: the quantity it goes into, or the source of its own derivation. Written by `npm run verification` from `src/wording/symbol-meanings.ts` and the texts of `src/core`; a test compares.',
    markdownTable(
      ['symbol', 'meaning', 'unit', 'in', 'where used'],
      nomenclatureRows(root).map(({ symbol, meaning, unit, within, files }) => [
        `\`${symbol}\``,
        meaning,
        unit,
        within.map((place) => `\`${place}\``).join(', '),
        files,
      ]),
    ),
  ].join('\n\n')}\n`;
