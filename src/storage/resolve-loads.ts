import type { ScrewGroup } from '../core/joint/joint.ts';
import { polarMoment } from '../core/loads/in-plane.ts';
import type { Pivot } from '../core/loads/out-of-plane.ts';
import { centroidOf, type ScrewPattern, type ScrewPosition, screwPositions } from '../core/loads/pattern.ts';
import { momentsAbout, type PartLoad, screwLoads } from '../core/loads/screw-loads.ts';
import { momentAlong, principalAxes } from '../core/loads/spread.ts';
import { toCore } from '../core/units/convert.ts';
import type { JointDocument } from './document.ts';
import type { Faults } from './resolve.ts';

type GivenJoint = JointDocument['joint'];

/** Smaller than this a moment is binary dust of arms that cancel, N·mm. */
const MOMENT_DUST = 1e-6;
/** Σ r² below which all screws lie in one point, mm². */
const POINT_DUST = 1e-6;

/** The layout of a document in the words of the calculation. */
export function patternOf(pattern: GivenJoint['pattern']): ScrewPattern {
  switch (pattern.kind) {
    case 'single':
      return pattern;
    case 'rectangular':
      return {
        kind: 'rectangular',
        columns: pattern.columns,
        rows: pattern.rows,
        spacingX: pattern.spacingX_mm,
        spacingY: pattern.spacingY_mm,
      };
    case 'circular':
      return { kind: 'circular', count: pattern.count, diameter: pattern.diameter_mm };
    case 'free':
      return { kind: 'free', positions: pattern.positions_mm };
  }
}

const pivotOf = (pivot: GivenJoint['loads']['pivot']): Pivot =>
  pivot.kind === 'centroid' ? pivot : { kind: 'edge', x: pivot.x_mm, y: pivot.y_mm };

/** The pattern of a document with what its screws have to hold; faults are reported at their keys. */
export function resolveGroup(given: GivenJoint, faults: Faults): ScrewGroup {
  const { loads } = given;
  const pattern = patternOf(given.pattern);
  const pivot = pivotOf(loads.pivot);
  const load: PartLoad = {
    force: { x: loads.shear_N, y: loads.shearAcross_N, pull: loads.pull_N },
    at: loads.at_mm,
    moment: {
      x: toCore(loads.moment_Nm.x, 'N·m'),
      y: toCore(loads.moment_Nm.y, 'N·m'),
      z: toCore(loads.moment_Nm.z, 'N·m'),
    },
  };
  reportMisfits(pattern, load, pivot, faults);
  return { pattern, load, pivot, loads: screwLoads(pattern, load, pivot) };
}

function reportMisfits(pattern: ScrewPattern, load: PartLoad, pivot: Pivot, faults: Faults): void {
  const positions = screwPositions(pattern);
  const moments = momentsAbout(load, centroidOf(positions));
  const turns = polarMoment(positions.map((position) => ({ ...position, area: 1 })));
  if (Math.abs(moments.z) > MOMENT_DUST && turns < POINT_DUST) {
    faults.add('joint.loads.moment_Nm.z', 'twist-on-one-point', { moment: moments.z });
  }
  if (pivot.kind === 'edge') reportScrewsBeyond(pivot, positions, faults);
  else reportMissingArms(positions, moments, faults);
}

function reportScrewsBeyond(
  pivot: Extract<Pivot, { kind: 'edge' }>,
  positions: readonly ScrewPosition[],
  faults: Faults,
): void {
  const centre = centroidOf(positions);
  for (const axis of ['y', 'x'] as const) {
    const farthest = Math.max(...positions.map((position) => Math.abs(position[axis] - centre[axis])));
    if (farthest >= pivot[axis]) {
      faults.add(`joint.loads.pivot.${axis}_mm`, 'screw-beyond-edge', { edge: pivot[axis], screw: farthest });
    }
  }
}

/** A moment along a principal axis on which all screws stand in one place. */
function reportMissingArms(
  positions: readonly ScrewPosition[],
  moments: { readonly x: number; readonly y: number },
  faults: Faults,
): void {
  for (const axis of principalAxes(positions)) {
    const moment = momentAlong(axis, moments);
    if (axis.spread > 0 || Math.abs(moment) <= MOMENT_DUST) continue;
    const { x, y } = axis.direction;
    faults.add('joint.loads.pivot.kind', 'tilt-without-arm', {
      axis: Math.abs(y) >= Math.abs(x) ? 'x' : 'y',
      moment,
    });
  }
}
