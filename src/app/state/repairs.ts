import { convert } from '../../core/units/convert.ts';
import type { Refusal } from '../../storage/refusal.ts';
import type { Edit } from './edit.ts';

/** One press that makes a refused edit valid. */
export interface RepairEdits {
  readonly label: string;
  readonly edits: readonly Edit[];
}

/** Reads what the document would hold at a path, the refused edits in it. */
export type ValueAt = (path: string) => unknown;

const siblingOf = (path: string, key: string): string => path.replace(/[^.]+$/, key);

function swap(one: string, other: string, valueAt: ValueAt): readonly Edit[] {
  return [
    { path: one, value: valueAt(other) },
    { path: other, value: valueAt(one) },
  ];
}

function readInches(value: unknown): unknown {
  const readings: readonly unknown[] = Array.isArray(value) ? value : [value];
  return readings.map((reading) =>
    typeof reading === 'number' ? convert(reading, { from: 'in', to: 'mm' }) : reading,
  );
}

/** The repair that the likely cause of a refusal asks for; absent where only the person can know. */
export function repairOf({ path, code, facts }: Refusal, valueAt: ValueAt): RepairEdits | undefined {
  switch (code) {
    case 'pilot-not-below-knurl':
      return { label: 'Swap them', edits: swap(siblingOf(path, 'knurlDiameter_mm'), path, valueAt) };
    case 'length-and-knurl-swapped':
      return { label: 'Swap them', edits: swap(path, siblingOf(path, 'length_mm'), valueAt) };
    case 'looks-like-inches':
      return { label: 'Take it as inches', edits: [{ path, value: readInches(valueAt(path)) }] };
    case 'layer-above-line':
      return { label: 'Swap them', edits: swap(path, 'joint.host.wall.lineWidth_mm', valueAt) };
    case 'clearance-below-screw':
      return { label: `Use ⌀ ${facts['medium']}`, edits: [{ path, value: facts['medium'] }] };
    case 'no-such-washer':
      return { label: 'Leave the washer out', edits: [{ path, value: 'none' }] };
    default:
      return undefined;
  }
}
