import { screwPositions } from '../../core/loads/pattern.ts';
import { convert } from '../../core/units/convert.ts';
import type { JointDocument } from '../../storage/document.ts';
import { openDocument } from '../../storage/open-document.ts';
import type { Refusal } from '../../storage/refusal.ts';
import { patternOf } from '../../storage/resolve-loads.ts';
import type { Edit } from './edit.ts';
import { edgeBeyond, proposedEdge, sleeveAround } from './proposals.ts';

/** One press that makes a refused edit valid. */
export interface RepairEdits {
  readonly label: string;
  readonly edits: readonly Edit[];
}

/** Reads what the document would hold at a path, the refused edits in it; all of it at an empty path. */
export type ValueAt = (path: string) => unknown;

const siblingOf = (path: string, key: string): string => path.replace(/[^.]+$/, key);

function swap(one: string, other: string, valueAt: ValueAt): readonly Edit[] {
  return [
    { path: one, value: valueAt(other) },
    { path: other, value: valueAt(one) },
  ];
}

/** Each number of a value changed, be it one or a list. */
const changedIn = (value: unknown, change: (reading: number) => number): unknown =>
  Array.isArray(value)
    ? value.map((one: unknown) => changedIn(one, change))
    : typeof value === 'number'
      ? change(value)
      : value;

const readInches = (value: unknown): unknown =>
  changedIn(value, (reading) => convert(reading, { from: 'in', to: 'mm' }));

const readRadii = (value: unknown): unknown => changedIn(value, (radius) => 2 * radius);

type GivenJoint = JointDocument['joint'];

/** Repairs of values that the joint as a whole objects to. */
function groupRepair({ path, code, facts }: Refusal, joint: GivenJoint): RepairEdits | undefined {
  switch (code) {
    case 'twist-on-one-point':
      return { label: 'Let the load act at the screw', edits: loadAtScrew(joint) };
    case 'tilt-without-arm':
      return {
        label: 'Turn it about its edge',
        edits: [{ path: 'joint.loads.pivot', value: proposedEdge(joint) }],
      };
    case 'screw-beyond-edge': {
      const edge = edgeBeyond(Number(facts['screw']), joint.clamped.clearanceHole_mm);
      return { label: `Put the edge at ${edge}`, edits: [{ path, value: edge }] };
    }
    case 'sleeve-not-wider': {
      const diameter = sleeveAround(joint.clamped.clearanceHole_mm);
      return { label: `Use ⌀ ${diameter}`, edits: [{ path, value: diameter }] };
    }
    case 'seat-contradicts-side':
      return { label: 'Let the sizes decide', edits: [{ path, value: 'from-geometry' }] };
    default:
      return undefined;
  }
}

/** Through the one point that all screws lie in, with no moment in the plane. */
function loadAtScrew({ pattern }: GivenJoint): readonly Edit[] {
  const [screw] = screwPositions(patternOf(pattern));
  return [
    ...(['x', 'y'] as const).map((axis) => ({
      path: `joint.loads.at_mm.${axis}`,
      value: screw?.[axis] ?? 0,
    })),
    { path: 'joint.loads.moment_Nm.z', value: 0 },
  ];
}

/** The repair that the likely cause of a refusal asks for; absent where only the person can know. */
export function repairOf(refusal: Refusal, valueAt: ValueAt): RepairEdits | undefined {
  const { path, code, facts } = refusal;
  switch (code) {
    case 'pilot-not-below-knurl':
      return { label: 'Swap them', edits: swap(siblingOf(path, 'knurlDiameter_mm'), path, valueAt) };
    case 'length-and-knurl-swapped':
      return { label: 'Swap them', edits: swap(path, siblingOf(path, 'length_mm'), valueAt) };
    case 'looks-like-inches':
    case 'hole-looks-like-inches':
      return { label: 'Take it as inches', edits: [{ path, value: readInches(valueAt(path)) }] };
    case 'hole-looks-like-radius':
      return { label: 'Take it as a radius', edits: [{ path, value: readRadii(valueAt(path)) }] };
    case 'hole-swapped': {
      const drawn = siblingOf(path, 'drawn_mm');
      const measured = valueAt(path);
      if (!Array.isArray(measured) || measured.length > 1) return undefined;
      return {
        label: 'Swap them',
        edits: [
          { path: drawn, value: measured[0] as unknown },
          { path, value: [valueAt(drawn)] },
        ],
      };
    }
    case 'layer-above-line':
      return { label: 'Swap them', edits: swap(path, 'joint.host.wall.lineWidth_mm', valueAt) };
    case 'clearance-below-screw':
      return { label: `Use ⌀ ${facts['medium']}`, edits: [{ path, value: facts['medium'] }] };
    case 'no-such-washer':
      return { label: 'Leave the washer out', edits: [{ path, value: 'none' }] };
    default: {
      const opened = openDocument(valueAt(''));
      return opened.kind === 'opened' ? groupRepair(refusal, opened.document.joint) : undefined;
    }
  }
}
