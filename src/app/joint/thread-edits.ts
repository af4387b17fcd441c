import type { Catalogue } from '../../core/joint/catalogue.ts';
import type { JointDocument } from '../../storage/document.ts';
import type { Edit } from '../state/edit.ts';
import { sleeveAround } from '../state/proposals.ts';

/**
 * What a new screw thread takes with it: a clearance hole that was the usual one becomes the usual one again with a
 * spacer round it, a head that is not made for the thread gives way to one that is, and a length that is not sold is left to the program.
 * The drawer stays as it is: the ranking says which inserts are out.
 */
export function threadEdits(document: JointDocument, thread: string, catalogue: Catalogue): readonly Edit[] {
  const { screw, clamped } = document.joint;
  const before = catalogue.threads.find(({ id }) => id === screw.thread);
  const after = catalogue.threads.find(({ id }) => id === thread);
  const heads = catalogue.heads.filter((head) => head.thread === thread);
  const edits: Edit[] = [];
  if (after && clamped.clearanceHole_mm === before?.clearanceHoles.medium) {
    const hole = after.clearanceHoles.medium;
    edits.push({ path: 'joint.clamped.clearanceHole_mm', value: hole });
    if (clamped.sleeve) {
      edits.push({ path: 'joint.clamped.sleeve.outsideDiameter_mm', value: sleeveAround(hole) });
    }
  }
  if (heads[0] && !heads.some(({ standard }) => standard === screw.head)) {
    edits.push({ path: 'joint.screw.head', value: heads[0].standard });
  }
  if (screw.washer === 'plain' && !catalogue.washers.some((washer) => washer.thread === thread)) {
    edits.push({ path: 'joint.screw.washer', value: 'none' });
  }
  const lengths = catalogue.screwLengths.find((row) => row.thread === thread)?.lengths ?? [];
  if (screw.length_mm !== undefined && !lengths.includes(screw.length_mm)) {
    edits.push({ path: 'joint.screw.length_mm', value: undefined });
  }
  return edits;
}
