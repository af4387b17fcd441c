import { describe, expect, test } from 'vitest';
import { chanceModel } from '../../../src/core/chance/chance-model.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import { existingFinding } from '../../../src/core/joint/existing-finding.ts';
import type { JointDocument } from '../../../src/storage/document.ts';
import fc from '../../support/fast-check.ts';
import { answerableJoint, assessed, type Changes, theInsert } from '../../support/joints.ts';
import { expectRelative } from '../../support/published.ts';

type Existing = NonNullable<JointDocument['joint']['holes']['existing']>;

/** Pilot 4.21, knurl 4.93, length 5.3 mm: the bore wanted is 4.26 mm. */
const withHole = (existing: Existing, changes: Changes = {}): Changes => ({
  ...changes,
  holes: { existing },
});
const measured = (diameter_mm: number, depth_mm?: number): Existing => ({
  diameter_mm,
  known: 'as-measured',
  ...(depth_mm === undefined ? {} : { depth_mm }),
});

function findingIn(changes: Changes) {
  const finding = existingFinding(answerableJoint(changes), assessed(changes));
  if (!finding) throw new Error('the joint of the test has a hole that is there');
  return finding;
}

const knurlShear = (changes: Changes): number =>
  assessed(changes).limits.find(({ mode }) => mode === 'knurl-shear')?.capacity.median.value ?? Number.NaN;

describe('the assessment in a hole that is there', () => {
  test('takes bite, melt and chance from its bore: 4.42 mm leaves 0.255 mm a side (hand calculation)', () => {
    const { hole } = assessed(withHole(measured(4.42)));
    expectRelative(hole.bite.value, 0.255);
    expectRelative(hole.biteFactor.value, (4.93 - 4.42) / (4.93 - 4.26));
    // ½·π/4·(4.93² − 4.42²)·(5.3 − 0.28·4.93)
    expectRelative(hole.meltVolume.value, 7.339_79, 1e-6);
    expectRelative(hole.window.expected.value, 4.42);
  });
  test('holds as much less as it bites less', () => {
    expectRelative(knurlShear(withHole(measured(4.42))) / knurlShear(withHole(measured(4.26))), 0.51 / 0.67);
  });
  test('gives diameter and depth back as they were given', () => {
    const { hole } = assessed(withHole({ diameter_mm: 4.73, known: 'as-drawn', depth_mm: 7.7 }));
    expect([hole.drawn.value, hole.drawn.standing]).toEqual([4.73, 'measured']);
    expect([hole.depth.value, hole.depth.standing]).toEqual([7.7, 'measured']);
    expectRelative(hole.floor.value, 11.3 - 7.7);
    expectRelative(hole.well.value, 7.7 - 5.3);
  });
  test('as drawn is expected as this printer closes it, and scatters as it scatters', () => {
    const asDrawn = assessed(withHole({ diameter_mm: 4.73, known: 'as-drawn' })).hole;
    const asMeasured = assessed(withHole(measured(asDrawn.boreAsPrinted.value))).hole;
    expectRelative(asDrawn.boreAsPrinted.value, 4.73 - 0.28 + 0.23 * Math.log(4.73 / 4), 1e-9);
    expectRelative(asMeasured.biteFactor.value, asDrawn.biteFactor.value, 1e-9);
    expect(asDrawn.window.standardDeviation.value).toBeGreaterThan(
      3 * asMeasured.window.standardDeviation.value,
    );
  });
  test('as the slicer compensates it comes out as drawn', () => {
    const changes = {
      holes: {
        existing: { diameter_mm: 4.31, known: 'as-drawn' as const },
        compensation: 'in-slicer' as const,
      },
    };
    expect(assessed(changes).hole.boreAsPrinted.value).toBe(4.31);
  });
  test('is the one of a designed hole where the hole is as designed', () => {
    const designed = assessed();
    const { drawn, depth } = designed.hole;
    const same = assessed(withHole({ diameter_mm: drawn.value, known: 'as-drawn', depth_mm: depth.value }));
    expectRelative(same.hole.biteFactor.value, designed.hole.biteFactor.value, 1e-9);
    expectRelative(same.holds.characteristic.value, designed.holds.characteristic.value, 0.02);
    expect(same.hole.window.standardDeviation.value).toBe(designed.hole.window.standardDeviation.value);
  });
  test('holds nothing where the knurl does not bite, and says so without a number that is none', () => {
    const { limits, torque, hole } = assessed(withHole(measured(5.02)));
    expect(hole.bite.value).toBe(0);
    expect(hole.meltVolume.value).toBe(0);
    expect(limits.find(({ mode }) => mode === 'torque-out')?.capacity.median.value).toBe(0);
    expect(torque.kind).toBe('refused');
  });
  test('displaces more plastic in a bore below the pilot', () => {
    const volume = (diameter: number) => assessed(withHole(measured(diameter))).hole.meltVolume.value;
    // ½·π/4·(4.93² − 4.21²)·3.9196 + π/4·(4.21² − 4.02²)·5.3
    expectRelative(volume(4.02), 16.638_2, 1e-4);
    expect(volume(4.02)).toBeGreaterThan(volume(4.21));
  });
  test('goes through without a plug’s end, and lets the screw stand out', () => {
    const through = assessed(withHole(measured(4.3, 11.3)));
    const plug = through.limits.find(({ mode }) => mode === 'wall-plug')?.capacity.median;
    expect(plug?.entries.map(({ symbol }) => symbol)).not.toContain('σ_a');
    expect(through.hole.floor.value).toBe(0);
  });
  test('is sampled about its bore with the measurement’s scatter', () => {
    const joint = answerableJoint(withHole(measured(4.42)));
    const model = chanceModel(joint, theInsert(), 700);
    expect(model.expectedBore).toBe(4.42);
    expectRelative(model.intendedBore, 4.26);
    expectRelative(model.boreDeviation, Math.hypot(0.03, 0.05) / Math.sqrt(3));
  });
  test('never holds more in a wider bore', () => {
    const bore = fc.double({ min: 4.1, max: 5.1, noNaN: true });
    fc.assert(
      fc.property(bore, fc.double({ min: 0, max: 0.4, noNaN: true }), (one, more) => {
        const [narrow, wide] = [
          knurlShear(withHole(measured(one))),
          knurlShear(withHole(measured(one + more))),
        ];
        expect(wide).toBeLessThanOrEqual(narrow);
      }),
      { numRuns: 40 },
    );
  });
});

describe('existingFinding', () => {
  test('is none where the hole is designed', () => {
    expect(existingFinding(answerableJoint(), assessed())).toBeUndefined();
  });
  test.each([
    [4.08, 'too-small'],
    [4.17, 'tight'],
    [4.3, 'fits'],
    [4.5, 'loose'],
    [4.97, 'no-bite'],
  ] as const)('of a bore of %f mm is %s', (diameter, verdict) => {
    expect(findingIn(withHole(measured(diameter))).verdict).toBe(verdict);
  });
  test('gives its limits ascending', () => {
    const { smallest, pilot, largest, knurl } = findingIn(withHole(measured(4.3))).limits;
    const values = [smallest, pilot, largest, knurl].map(({ value }) => value);
    expect(values).toEqual([...values].sort((one, other) => one - other));
    expectRelative(smallest.value, 4.11);
    expectRelative(largest.value, 4.461);
  });
  test('judges the depth where it is known: insert 5.3 and melt 0.6 mm', () => {
    const finding = findingIn(withHole(measured(4.3, 5.7)));
    expect(finding.verdict).toBe('too-shallow');
    expectRelative(finding.depthNeeded.value, 5.3 + finding.meltHeight.value);
    expectRelative(finding.given?.well.value ?? Number.NaN, 0.4);
    expect(findingIn(withHole(measured(4.3))).given).toBeUndefined();
  });
  test('asks for the insert alone where the hole goes through', () => {
    const finding = findingIn(withHole(measured(4.3, 5.9), { host: { thickness_mm: 5.9 } }));
    expectRelative(finding.depthNeeded.value, 5.3);
    expect(finding.verdict).toBe('fits');
    expect(finding.given?.goesThrough).toBe(true);
  });
  test('sets the melt against that of the wanted bore', () => {
    const { meltVolume, meltVolumeWanted } = findingIn(withHole(measured(4.08)));
    expect(meltVolume.value).toBeGreaterThan(meltVolumeWanted.value);
    const wanted = assess(answerableJoint(), theInsert()).hole.meltVolume.value;
    expectRelative(meltVolumeWanted.value, wanted);
  });
});
