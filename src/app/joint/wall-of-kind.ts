import type { JointDocument } from '../../storage/document.ts';

type WallInput = JointDocument['joint']['host']['wall'];

/** Lines that a wall begins with when it is no longer given as measured. */
const USUAL_LINES = 4;
/** A wall as thick as its lines were, to the hundredth that a caliper shows. */
const READABLE_DECIMALS = 2;

/** The same wall given in the other way: its lines, or its thickness as measured. */
export function wallOfKind(
  wall: WallInput,
  kind: WallInput['kind'],
  thickness: number | undefined,
): WallInput {
  if (wall.kind === kind) return wall;
  const { lineWidth_mm } = wall;
  return kind === 'lines'
    ? { kind, count: USUAL_LINES, lineWidth_mm, convention: 'rounded-beads' }
    : { kind, thickness_mm: Number((thickness ?? lineWidth_mm).toFixed(READABLE_DECIMALS)), lineWidth_mm };
}
