import type { Situation } from '../../../src/core/pull-out/situation.ts';
import { given, situationWith } from '../../support/joints.ts';
import { shared } from './results.ts';

/** The core's situation with the dimensions of a solved model: PETG, walls that fill the boss. */
export function seatedIn(model: { bossPerKnurl: number; lengthPerKnurl: number }): Situation {
  const Dk = shared.knurlDiameter;
  const length = model.lengthPerKnurl * Dk;
  const situation = situationWith(
    { host: { bossDiameter_mm: model.bossPerKnurl * Dk } },
    { knurlDiameter_mm: [Dk], length_mm: [length + 0.4], knurledLength_mm: [length] },
  );
  return { ...situation, bore: given('D_t', shared.boreDiameter, 'mm'), wall: given('t', 2 * Dk, 'mm') };
}
