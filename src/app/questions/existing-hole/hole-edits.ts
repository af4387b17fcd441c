import type { ExistingHole } from '../../../core/holes/existing-hole.ts';
import type { HoleDesign } from '../../../core/joint/assessment.ts';
import type { JointDocument } from '../../../storage/document.ts';
import type { Edit } from '../../state/edit.ts';
import type { NamedQuantity } from '../../state/quantities.ts';

type GivenJoint = JointDocument['joint'];
export type GivenHole = NonNullable<GivenJoint['holes']['existing']>;
export type KnownAs = ExistingHole['known'];

export const EXISTING_PATH = 'joint.holes.existing';

/** To the hundredth that a caliper shows. */
const readable = (length: number): number => Number(length.toFixed(2));
/** What a hole begins with where no insert gives one, mm. */
const BEGIN = 4;

export const holeDiameter = (known: KnownAs): NamedQuantity => ({
  path: `${EXISTING_PATH}.diameter_mm`,
  label: known === 'as-drawn' ? 'Diameter as drawn ⌀' : 'Diameter measured ⌀',
  noun: 'A hole',
  limit: 'holeDiameter_mm',
  unit: 'mm',
  step: known === 'as-drawn' ? 0.05 : 0.01,
  usual: [2, 15],
  isDiameter: true,
});

export const HOLE_DEPTH: NamedQuantity = {
  path: `${EXISTING_PATH}.depth_mm`,
  label: 'Its depth',
  noun: 'A depth',
  limit: 'holeDepth_mm',
  unit: 'mm',
  step: 0.1,
  note: 'Empty: not known, taken as deep enough. As deep as the part is high: it goes through.',
};

/** The hole that a person begins with: the one there was, or what this joint would have. */
export function holeKnownAs(
  known: KnownAs,
  there: GivenHole | undefined,
  designed: HoleDesign | undefined,
): GivenHole {
  if (there) return { ...there, known };
  const { drawn, boreAsPrinted } = designed ?? {};
  const begin = known === 'as-drawn' ? drawn : boreAsPrinted;
  return { diameter_mm: readable(begin?.value ?? BEGIN), known };
}

/** The hole after a drill, and the wall that it leaves. */
export function editsOfDrill(
  { holes, host }: GivenJoint,
  drilled: { readonly diameter: number; readonly wallLeft: number },
): readonly Edit[] {
  const depth = holes.existing?.depth_mm;
  const existing: GivenHole = {
    diameter_mm: drilled.diameter,
    known: 'as-measured',
    ...(depth === undefined ? {} : { depth_mm: depth }),
  };
  return [
    { path: EXISTING_PATH, value: existing },
    {
      path: 'joint.host.wall',
      value: {
        kind: 'measured',
        thickness_mm: readable(drilled.wallLeft),
        lineWidth_mm: host.wall.lineWidth_mm,
      },
    },
  ];
}
