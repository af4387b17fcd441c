import results from '../../fixtures/finite-element/results.json';
import { theRow } from '../../support/the-row.ts';

export type SolvedCase = (typeof results.cases)[number];

export const { shared, benchmarks } = results;

/** Cases of the mesh that all are solved on. */
export const SOLVED: readonly SolvedCase[] = results.cases.filter((one) => one.density === 1);

/** Cases that were solved on a mesh of twice the density too, each with its coarser twin. */
export const REFINED = results.cases
  .filter((one) => one.density === 2)
  .map((fine) => ({
    id: fine.id,
    load: fine.load,
    fine,
    coarse: theRow(SOLVED, (one) => one.id === fine.id && one.load === fine.load),
  }));

/** A solved case by name and by where the reaction stands. */
export const solved = (id: string, load: string): SolvedCase =>
  theRow(SOLVED, (one) => one.id === id && one.load === load);
