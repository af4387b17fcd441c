import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findHoles } from '../../../src/core/hole-finding/find-holes.ts';
import type { FoundHole } from '../../../src/core/hole-finding/hole.ts';
import { readStl } from '../../../src/solids/read-stl.ts';

/** Numbers of a binary STL have 24 bits: a part of 70 mm is rounded to some millionths of a millimetre. */
const ROUNDING = 1e-5;

async function holesOfFile(name: string): Promise<readonly FoundHole[]> {
  const path = join(import.meta.dirname, '..', '..', 'fixtures', 'gmsh', name);
  const reading = await readStl(new Uint8Array(readFileSync(path)));
  if (reading.kind === 'refused') throw new Error(reading.refusal.code);
  const { holes, total } = findHoles(reading.solid.mesh);
  expect(holes).toHaveLength(total);
  return holes;
}

function expectWithin(value: number | undefined, wanted: number, room = ROUNDING): void {
  expect(Math.abs((value ?? Number.NaN) - wanted), `${value} against ${wanted}`).toBeLessThanOrEqual(room);
}

function expectHole(
  hole: FoundHole | undefined,
  { diameter, depth, mouth }: { diameter: number; depth: number; mouth: readonly [number, number, number] },
): void {
  expectWithin(hole?.cornerDiameter, diameter);
  expectWithin(hole?.depth, depth);
  expectWithin(hole?.mouth.x, mouth[0]);
  expectWithin(hole?.mouth.y, mouth[1]);
  expectWithin(hole?.mouth.z, mouth[2]);
}

const block = await holesOfFile('cross-bored-block.stl');
const plate = await holesOfFile('stepped-plate.stl');

describe('findHoles in a block meshed by gmsh, with the dimensions of its script', () => {
  const [across, vertical, oblique, ...others] = block;
  test('finds the three bores and not the boss', () => {
    expect(others).toEqual([]);
    expectHole(across, { diameter: 3.3, depth: 24, mouth: [20, 24, 8] });
    expect(across).toMatchObject({ lie: 'horizontal', ends: { mouth: 'open', far: 'open' } });
    expectHole(vertical, { diameter: 4.2, depth: 9, mouth: [10, 12, 22] });
    expect(vertical).toMatchObject({ lie: 'vertical', facets: 16, ends: { mouth: 'open', far: 'closed' } });
  });
  test('finds the oblique one with its longest and its shortest side', () => {
    // The top cuts it at 30°: the rim is r · tan 30° above and below its middle, less where no corner is at the very end.
    const rise = 2.6 * Math.tan(Math.PI / 6);
    expectWithin(oblique?.tilt, Math.PI / 6, 1e-6);
    expectWithin(oblique?.cornerDiameter, 5.2);
    expectWithin(oblique?.depth, 12 + rise, 0.05);
    expectWithin(oblique?.depthAllRound, 12 - rise, 0.05);
    expectWithin(oblique?.mouth.x, 31);
    expectWithin(oblique?.mouth.z, 16);
    expectWithin(oblique?.direction.x, 0.5, 1e-6);
    expect(oblique).toMatchObject({ lie: 'oblique', ends: { mouth: 'open', far: 'closed' } });
  });
});

describe('findHoles in a stepped plate meshed by gmsh, with the dimensions of its script', () => {
  const [oneThin, otherThin, countersunk, bore, pierced, counterbore, ...others] = plate;
  test('leaves out the taper, the slot and the countersink', () => {
    expect(others).toEqual([]);
    expectHole(countersunk, { diameter: 4, depth: 9, mouth: [24, 10, 9] });
  });
  test('finds the counterbore and its bore', () => {
    expectHole(bore, { diameter: 4.5, depth: 7, mouth: [9, 10, 7] });
    expectHole(counterbore, { diameter: 8, depth: 5, mouth: [9, 10, 12] });
    expect([bore?.ends, counterbore?.ends]).toEqual([
      { mouth: 'wider', far: 'open' },
      { mouth: 'open', far: 'narrower' },
    ]);
  });
  test('finds a bore that a thinner one crosses in one piece, the thinner one in two', () => {
    expectHole(pierced, { diameter: 6, depth: 12, mouth: [48, 10, 12] });
    for (const thin of [oneThin, otherThin]) {
      expectWithin(thin?.cornerDiameter, 2.4);
      // From the side to the other bore: 10 − 3 mm in the middle, to 10 − √(3² − 1.2²) at its sides.
      expectWithin(thin?.depthAllRound, 7, 1e-4);
      expectWithin(thin?.depth, 10 - Math.sqrt(3 ** 2 - 1.2 ** 2), 0.03);
      expect(thin).toMatchObject({ lie: 'horizontal', ends: { mouth: 'open', far: 'open' } });
    }
  });
  test('finds all of them whole', () => {
    for (const hole of [oneThin, otherThin, countersunk, bore, pierced, counterbore])
      expectWithin(hole?.turn, 2 * Math.PI, 1e-6);
  });
});
