import type { Evidence, SetupEvidence, TestFinding } from '../core/bench/evidence.ts';
import { type MovedHold, movedHold } from '../core/bench/moved-hold.ts';
import { characteristicBond, medianBond } from '../core/evidence/bond-prediction.ts';
import type { Insert } from '../core/inserts/insert.ts';
import type { Joint } from '../core/joint/joint.ts';
import { admit } from '../core/joint/stop.ts';
import { sentenceOfTestFault } from '../wording/bench-tests.ts';
import { plainText } from '../wording/sentence.ts';
import { quantity, rounded } from './rounded.ts';

/** What the tests said, test by test and set-up by set-up, and what it makes of the insert that the answers are for. */
export function evidenceReport({ findings, setups, ofJoint }: Evidence, joint: Joint, insert?: Insert) {
  const admission = admit(joint);
  return {
    used: joint.tested !== undefined,
    tests: findings.map(findingReport),
    setups: setups.map(setupReport),
    ofJoint: ofJoint ? setupReport(ofJoint) : null,
    knurlShear:
      ofJoint && insert && admission.kind === 'admitted'
        ? movedReport(movedHold(admission.joint, insert, ofJoint.tested))
        : null,
  };
}

const movedReport = ({ before, after }: MovedHold) => ({
  ...quantity('medianWithout', before.median),
  ...quantity('characteristicWithout', before.characteristic),
  ...quantity('median', after.median),
  ...quantity('characteristic', after.characteristic),
});

const findingReport = ({ test, says, fault, model, bond }: TestFinding) => ({
  test: test.id,
  says,
  ...(fault ? { code: fault.code, sentence: plainText(sentenceOfTestFault(fault)) } : {}),
  ...(model ? quantity('loadAtFullBond', model) : {}),
  ...(bond ? { bondFactor: rounded(bond.value) } : {}),
});

const setupReport = ({ printer, material, setting, findings, priorMedian, tested }: SetupEvidence) => ({
  ...(printer === undefined ? {} : { printer }),
  material,
  setting,
  tests: findings.map(({ test }) => test.id),
  broke: findings.filter(({ says }) => says === 'broke').length,
  held: findings.filter(({ says }) => says === 'held').length,
  bondFactorBefore: rounded(priorMedian),
  bondFactor: rounded(medianBond(tested.unpulled)),
  bondFactorCharacteristic: rounded(characteristicBond(tested.unpulled)),
});
