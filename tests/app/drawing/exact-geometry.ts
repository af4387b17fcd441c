import { expect } from 'vitest';
import { leastHalfWidth } from '../../../src/app/drawing/frame.ts';
import { extent, type Point } from '../../../src/app/drawing/points.ts';
import { type SectionGeometry, sectionGeometry } from '../../../src/app/drawing/section-geometry.ts';
import type { SectionInput } from '../../../src/app/drawing/section-input.ts';

/** Lengths on paper are lengths of the input, but for binary dust, mm. */
export const EXACT = 1e-9;

export function geometryOf(input: SectionInput): SectionGeometry {
  return sectionGeometry(input, { halfWidth: leastHalfWidth(input, 'ample'), wobble: 0.1 });
}

export function widthOf(points: readonly Point[]): number {
  const { left, right } = extent(points);
  return right - left;
}

export function expectExact(found: number, wanted: number): void {
  expect(Math.abs(found - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual(EXACT);
}
