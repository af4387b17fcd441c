import type { InsertDimensions } from '../inserts/dimensions.ts';
import type { SeatKind } from '../pull-out/limit.ts';
import type { SeatFinding, SeatReason } from './assessment.ts';
import type { Joint } from './joint.ts';

/**
 * Where the clamped part bears, found from the geometry; a person may overrule it.
 *
 *     far side          the insert is set from behind, against a shoulder
 *     over a gap        there is free distance between the part and the printed face
 *     on the plastic    the insert sits below the face, or the clearance hole is as wide as the knurl
 *     on the insert     everything else: the preload closes in metal
 *
 * Bending of a thin part over a gap is not judged.
 *
 * @param joint - clearance hole, gap, sunk [mm], side of the insert, override
 * @param insert - knurl diameter Dk [mm]
 * @returns the seat, why, and what the geometry alone gives
 * @source insert-design-guide mating hole smaller than the insert face; sub-flush is a jack-out condition
 * @example clearance hole 3.4 under a knurl of 5.0 mm without gap sits on the insert
 */
export function findSeat(joint: Joint, insert: InsertDimensions): SeatFinding {
  const knurlDiameter = insert.knurlDiameter.estimate.value;
  const { clearanceHole } = joint.clamped;
  const found = geometricSeat(joint, knurlDiameter);
  const overruled = joint.seatOverride !== undefined && joint.seatOverride !== found.kind;
  return {
    kind: joint.seatOverride ?? found.kind,
    reason: overruled ? 'overruled' : found.reason,
    fromGeometry: found.kind,
    clearanceHole,
    knurlDiameter,
    gap: joint.gap,
    sunk: joint.sunk,
  };
}

function geometricSeat(joint: Joint, knurlDiameter: number): { kind: SeatKind; reason: SeatReason } {
  if (joint.insertSide === 'far-side') return { kind: 'far-side', reason: 'insert-from-far-side' };
  if (joint.gap > 0) return { kind: 'over-gap', reason: 'gap-open' };
  if (joint.sunk > 0) return { kind: 'on-plastic', reason: 'insert-sunk' };
  if (joint.clamped.clearanceHole >= knurlDiameter) {
    return { kind: 'on-plastic', reason: 'clearance-reaches-knurl' };
  }
  return { kind: 'on-insert', reason: 'clearance-smaller-than-knurl' };
}
