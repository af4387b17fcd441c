import type { EndKind, FoundHole } from './hole.ts';
import { along, dot, type Point } from './surface.ts';

const SAME_DIRECTION = Math.cos((1 * Math.PI) / 180);
/** Share of the radius that two axes may lie apart. */
const APART = 0.05;
/** A cone or a chamfer may stand between two bores, as long as this share of the wider one's diameter. */
const BETWEEN = 0.5;

/** Whether another hole begins or ends at a place of this hole's axis, looking outward. */
function touches(place: Point, outward: Point, other: FoundHole, radius: number): boolean {
  if (Math.abs(dot(outward, other.direction)) < SAME_DIRECTION) return false;
  return [other.mouth, along(other.mouth, other.depth, other.direction)].some((end) => {
    const arm = along(end, -1, place);
    const reach = dot(arm, outward);
    const aside = along(arm, -reach, outward);
    if (Math.hypot(aside.x, aside.y, aside.z) > APART * radius) return false;
    return reach >= -APART * radius && reach <= BETWEEN * Math.max(2 * radius, other.cornerDiameter);
  });
}

function kindAt(hole: FoundHole, others: readonly FoundHole[], at: 'mouth' | 'far'): EndKind {
  const { mouth, direction, depth, cornerDiameter } = hole;
  const back = { x: -direction.x, y: -direction.y, z: -direction.z };
  const [place, outward] = at === 'mouth' ? [mouth, back] : [along(mouth, depth, direction), direction];
  const kind = hole.ends[at];
  const joined = others.some(
    (other) =>
      (kind === 'closed' ? other.cornerDiameter < cornerDiameter : other.cornerDiameter > cornerDiameter) &&
      touches(place, outward, other, cornerDiameter / 2),
  );
  if (!joined) return kind;
  return kind === 'closed' ? 'narrower' : 'wider';
}

/**
 * The hole with its ends told apart: where a bore on the same axis goes on, it is neither open nor closed, and a cone
 * between the two is no chamfer.
 */
export function withNeighbours(hole: FoundHole, others: readonly FoundHole[]): FoundHole {
  const ends = { mouth: kindAt(hole, others, 'mouth'), far: kindAt(hole, others, 'far') };
  const { chamfers } = hole;
  return {
    ...hole,
    ends,
    chamfers: {
      mouth: ends.mouth === 'open' ? chamfers.mouth : 0,
      far: ends.far === 'open' ? chamfers.far : 0,
    },
  };
}
