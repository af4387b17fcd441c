import { describe, expect, test } from 'vitest';
import type { Derived, Entry } from '../../../src/core/sources/derived.ts';
import { wayOf } from '../../../src/core/steps/steps.ts';
import { CALCULATED, stepsOf } from './calculations.ts';

/**
 * Every value put into the calculation of a joint that no step computes, by symbol and unit. Where a quantity of the same
 * symbol and unit is computed elsewhere, the quantities follow that the given one goes into.
 */
const GIVEN: Readonly<Record<string, readonly string[] | 'everywhere'>> = {
  // Typed into the joint
  'P N': ['F_d', 'F_req', 'P', 'Q_held', 'T_most', 'λ'],
  'Q N': ['F_req', 'Q_req'],
  'S -': 'everywhere',
  'S_c -': 'everywhere',
  't h': 'everywhere',
  'T °C': 'everywhere',
  'D_b mm': ['A_0', 'A_b', 'A_n', 'D_i', 'D_o', 'l_held'],
  'ρ -': 'everywhere',
  'h mm': 'everywhere',
  'w mm': 'everywhere',
  't_s mm': 'everywhere',
  'step mm': 'everywhere',
  'lid mm': 'everywhere',
  'part mm': 'everywhere',
  'gap mm': 'everywhere',
  'sunk mm': 'everywhere',
  'D_tube mm': 'everywhere',
  't mm': ['D_cone', 'k', 'k_tube', 't'],
  'δ -': 'everywhere',
  // Read with an instrument; and how many readings, walls, screws there are
  'x_i mm': 'everywhere',
  'a_c mm': 'everywhere',
  'D_g mm': ['D_g'],
  'T mm': ['T', 'l_most'],
  'n -': ['D_k', 'D_p', 'F_s', 'L', 'L_k', 'Q_x', 'Q_y', 's_x', 't', 'u_A'],
  // Load on the part, its place from the centroid of the screws, and where these stand
  'F_x N': 'everywhere',
  'F_y N': 'everywhere',
  'F_z N': 'everywhere',
  'M_x0 N·mm': 'everywhere',
  'M_y0 N·mm': 'everywhere',
  'M_z0 N·mm': 'everywhere',
  'x_F mm': 'everywhere',
  'y_F mm': 'everywhere',
  'z_F mm': 'everywhere',
  'b_x mm': 'everywhere',
  'b_y mm': 'everywhere',
  'x_w mm': 'everywhere',
  'y_w mm': 'everywhere',
  'u_x -': 'everywhere',
  'u_y -': 'everywhere',
  'v_x -': 'everywhere',
  'v_y -': 'everywhere',
  // Rows of tables: threads, screws, washers, materials, frictions
  'd mm': 'everywhere',
  'P mm': 'everywhere',
  'd_min mm': 'everywhere',
  'd_2min mm': 'everywhere',
  'D_1max mm': 'everywhere',
  'D_2max mm': 'everywhere',
  'd_k mm': 'everywhere',
  'd_w mm': ['A_p', 'D_Km', 'D_cone'],
  'd_b mm': 'everywhere',
  'd_c mm': 'everywhere',
  'd_o mm': 'everywhere',
  'd_h mm': ['A_p', 'A_sh', 'D_Km', 'k_tube'],
  'D mm': ['k'],
  'washer mm': 'everywhere',
  'R_m MPa': 'everywhere',
  'R_p MPa': 'everywhere',
  'p_G MPa': 'everywhere',
  'τ_b MPa': 'everywhere',
  'μ_G -': 'everywhere',
  'μ_K -': 'everywhere',
  'μ_s -': 'everywhere',
  'E MPa': 'everywhere',
  'σ_xy MPa': 'everywhere',
  'σ_z MPa': 'everywhere',
  'σ_cb MPa': 'everywhere',
  'σ_low MPa': 'everywhere',
  'σ_high MPa': 'everywhere',
  'τ_il MPa': 'everywhere',
  'T_s °C': 'everywhere',
  'T_a °C': 'everywhere',
  'T_b °C': 'everywhere',
  'r_b -': ['r_T'],
  'r_1 -': ['m_23', 'n'],
  'r_1000 -': ['n', 'r_1000'],
  'r_tab -': 'everywhere',
  // Constants of the method and of an unknown printer, docs/method.md
  'η_hot -': 'everywhere',
  's_b -': 'everywhere',
  's_w -': 'everywhere',
  'p -': ['t', 'z_r'],
  'ν -': 'everywhere',
  'w -': 'everywhere',
  'f mm': ['D_f', 'D_t'],
  'l_d mm': 'everywhere',
  'a mm': 'everywhere',
  'b mm': 'everywhere',
  'e_max mm': 'everywhere',
  'u_a mm': 'everywhere',
  'u_b mm': 'everywhere',
  'u_ab mm²': 'everywhere',
  's_r mm': 'everywhere',
  'r_o mm': 'everywhere',
};

const READING = /^x_\d+$/;
const keyOf = ({ symbol, unit }: Entry): string => `${READING.test(symbol) ? 'x_i' : symbol} ${unit}`;

function isGiven(entry: Entry, within: Derived): boolean {
  const where = GIVEN[keyOf(entry)];
  return where === 'everywhere' || where?.includes(within.symbol) === true;
}

const bare = CALCULATED.flatMap(stepsOf).flatMap(({ derived }) =>
  derived.entries.filter((entry) => wayOf(entry) === undefined).map((entry) => ({ entry, derived })),
);

describe('a value that is put into a step of the calculation', () => {
  test('was computed in a step of its own, or is typed, read, tabulated or a constant of the method', () => {
    const computed = bare
      .filter(({ entry, derived }) => !isGiven(entry, derived))
      .map(({ entry, derived }) => `${keyOf(entry)} in ${derived.symbol} = ${derived.formula}`);
    expect([...new Set(computed)]).toEqual([]);
  });
  test.each(Object.keys(GIVEN))('is given as %s somewhere: no row stands idle', (key) => {
    expect(bare.some(({ entry }) => keyOf(entry) === key)).toBe(true);
  });
});
