import type { Evidence, SetupEvidence, TestFinding } from '../core/bench/evidence.ts';
import { characteristicBond, medianBond } from '../core/evidence/bond-prediction.ts';
import { sentenceOfTestFault } from '../wording/bench-tests.ts';
import { quantity, rounded } from './rounded.ts';

/** What the tests said, test by test and set-up by set-up. */
export const evidenceReport = ({ findings, setups, ofJoint }: Evidence) => ({
  tests: findings.map(findingReport),
  setups: setups.map(setupReport),
  ofJoint: ofJoint ? setupReport(ofJoint) : null,
});

const findingReport = ({ test, says, fault, model, bond }: TestFinding) => ({
  test: test.id,
  says,
  ...(fault ? { code: fault.code, sentence: sentenceOfTestFault(fault) } : {}),
  ...(model ? quantity('loadAtFullBond', model) : {}),
  ...(bond ? { bondFactor: rounded(bond.value) } : {}),
});

const setupReport = ({ printer, material, setting, findings, priorMedian, tested }: SetupEvidence) => ({
  ...(printer === undefined ? {} : { printer }),
  material,
  setting,
  tests: findings.map(({ test }) => test.id),
  bondFactorBefore: rounded(priorMedian),
  bondFactor: rounded(medianBond(tested.unpulled)),
  bondFactorCharacteristic: rounded(characteristicBond(tested.unpulled)),
});
