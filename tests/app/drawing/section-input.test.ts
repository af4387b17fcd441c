import { describe, expect, test } from 'vitest';
import { sectionInput } from '../../../src/app/drawing/section-input.ts';
import { assessed, type Changes, givenJoint } from '../../support/joints.ts';

const read = (changes: Changes = {}) => sectionInput(givenJoint(changes), assessed(changes));

describe('sectionInput', () => {
  test('takes what was given from the joint', () => {
    const input = read();
    expect(input.clamped).toEqual({
      kind: 'metal',
      name: 'Aluminium EN AW-6082',
      thickness: 2.7,
      clearanceHole: 3.4,
    });
    expect(input.host).toMatchObject({
      thickness: 11.3,
      topSkin: 0.9,
      axis: 'along-build',
      wallCount: 5,
      wallMeasured: false,
      lineWidth: 0.43,
      layerHeight: 0.2,
      infill: { density: 0.37, family: 'prismatic', pattern: 'grid' },
    });
    expect(input.screw).toMatchObject({
      designation: 'M3',
      description: 'ISO 4762, class 8.8',
      nominalDiameter: 3,
    });
    expect('bossDiameter' in input.host).toBe(false);
    expect('washer' in input.screw).toBe(false);
  });

  test('takes what follows from the assessment', () => {
    const found = assessed();
    const input = read();
    expect(input.insert).toMatchObject({
      knurlDiameter: 4.93,
      pilotDiameter: 4.21,
      length: 5.3,
      remelted: true,
    });
    expect(input.insert.knurledLength).toBe(found.dimensions.knurledLength.estimate.value);
    expect(input.hole).toEqual({
      borePrinted: found.hole.boreAsPrinted.value,
      boreDrawn: found.hole.drawn.value,
      depth: found.hole.depth.value,
      chamfer: found.hole.chamfer.value,
      meltHeight: found.hole.meltHeight.value,
      meltVolume: found.hole.meltVolume.value,
      bite: found.hole.bite.value,
      bossLeast: found.hole.bossDiameter.value,
    });
    expect(input.host.floor).toBe(found.hole.floor.value);
    expect(input.host.wallThickness).toBe(found.hole.wall.value);
    expect(input.seat).toBe('on-insert');
  });

  test('draws the screw that was chosen, or the least length when none fits', () => {
    expect(read().screw).toMatchObject({ state: 'chosen' });
    const changes: Changes = {
      screw: {
        thread: 'M3',
        head: 'ISO 4762',
        propertyClass: '8.8',
        friction: 'as-delivered',
        washer: 'none',
        length_mm: 4,
      },
    };
    const found = assessed(changes).screw;
    expect(found.kind).toBe('refused');
    expect(read(changes).screw).toMatchObject({
      state: 'refused',
      length: found.kind === 'refused' ? found.leastLength : Number.NaN,
    });
  });

  test('counts the lines of a measured wall', () => {
    const host = { wall: { kind: 'measured', thickness_mm: 1.8, lineWidth_mm: 0.45 } } as const;
    expect(read({ host }).host).toMatchObject({ wallMeasured: true, wallThickness: 1.8, wallCount: 4 });
  });

  test('melts nothing when the insert is set cold', () => {
    expect(read({ setting: 'cold-pressed' }).insert.remelted).toBe(false);
  });
});
