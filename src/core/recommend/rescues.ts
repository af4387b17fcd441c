import type { Insert } from '../inserts/insert.ts';
import { insertDimensions } from '../inserts/insert-dimensions.ts';
import type { ExistingFinding } from '../joint/existing-finding.ts';
import { verdictIn } from '../joint/existing-verdict.ts';
import { boreOf } from '../joint/joint-bore.ts';
import type { AnswerableJoint } from '../joint/stop.ts';
import type { HexNut } from '../screws/screw.ts';
import type { Recommendation } from './recommendation.ts';
import type { Rescue } from './rescue.ts';
import { rescueByDepth, rescueByOpening } from './rescue-by-drill.ts';
import { rescueByNut } from './rescue-by-nut.ts';
import { tryInsert } from './tried-insert.ts';

/** Room below a self-tapping insert, mm, and wall round it over its diameter, [-], as makers ask. */
const SELF_TAPPING = { room: { least: 2, most: 3 }, wallShare: { least: 0.2, most: 0.9 } } as const;

/** What rescues are looked for with. */
export interface InNeed {
  readonly joint: AnswerableJoint;
  /** The insert that the hole does not serve. */
  readonly insert: Insert;
  readonly finding: ExistingFinding;
  readonly drawer: readonly Insert[];
  /** The drawer ranked in the hole that is there. */
  readonly recommendation: Extract<Recommendation, { readonly kind: 'answered' }>;
  readonly nuts: readonly HexNut[];
}

/**
 * What helps where a hole that is there does not serve an insert, ranked.
 *
 * First what holds as much as the joint asks with some torque, then what holds less, then what cannot be computed, at
 * last what is not possible; of equals the least work first: another insert, open the hole up, drill it deeper, a nut
 * behind, a self-tapping insert, print anew. Each is tried alone on the whole calculation.
 *
 * @param need - joint with a hole that is there, its insert, the drawer and its ranking, rows of nuts
 * @returns rescues, each with what it holds [N] or why it is none
 * @source own-model one change at a time
 * @source trade-practice which rescues there are
 */
export function rescuesFor(need: InNeed): readonly Rescue[] {
  const { joint, insert, finding, nuts } = need;
  const deeper = rescueByDepth(joint, insert, finding);
  const inOrderOfWork: readonly Rescue[] = [
    byAnotherInsert(need),
    rescueByOpening(joint, insert, finding),
    ...(deeper ? [deeper] : []),
    rescueByNut(joint, finding.bore, nuts),
    { kind: 'possible', code: 'self-tapping-insert', ...SELF_TAPPING },
    byReprint(joint, insert),
  ];
  return [...inOrderOfWork].sort((one, other) => classOf(one) - classOf(other));
}

function classOf(rescue: Rescue): number {
  if (rescue.kind === 'impossible') return 3;
  if (rescue.code === 'self-tapping-insert') return 2;
  return rescue.isEnough ? 0 : 1;
}

/** The first of the ranking that the hole fits; without one, the first whose pilot melts its way in. */
function byAnotherInsert({ joint, insert, drawer, recommendation }: InNeed): Rescue {
  const others = recommendation.ranked.flatMap(({ insertId }) => {
    const other = insertId === insert.id ? undefined : drawer.find(({ id }) => id === insertId);
    if (!other) return [];
    const dimensions = insertDimensions(other);
    return [{ other, verdict: verdictIn(joint, dimensions, boreOf(joint, dimensions)) }];
  });
  const best =
    others.find(({ verdict }) => verdict === 'fits') ?? others.find(({ verdict }) => verdict === 'tight');
  const tried = best && tryInsert(joint, best.other);
  return best && tried
    ? {
        kind: 'possible',
        code: 'another-insert',
        insertId: best.other.id,
        verdict: best.verdict,
        ...tried.gain,
      }
    : { kind: 'impossible', code: 'another-insert', why: 'none-in-drawer' };
}

function byReprint(joint: AnswerableJoint, insert: Insert): Rescue {
  const { existing: _, ...holes } = joint.holes;
  const tried = tryInsert({ ...joint, holes }, insert);
  if (!tried) return { kind: 'impossible', code: 'reprint', why: 'no-room' };
  const { bore, found } = tried.tightening;
  return {
    kind: 'possible',
    code: 'reprint',
    drawn: bore.drawn,
    depth: found.hole.depth,
    ...tried.gain,
  };
}
