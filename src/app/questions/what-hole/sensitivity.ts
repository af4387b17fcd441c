import { biteFactor } from '../../../core/holes/bore.ts';
import { changedBore } from '../../../core/holes/changed-bore.ts';
import { fitWindow } from '../../../core/holes/fit-window.ts';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import { type Derived, entryFrom } from '../../../core/sources/derived.ts';

/** What comes of the hole when the bore is printed wider or tighter than expected. */
export interface Sensitivity {
  /** Against the expected bore, mm. */
  readonly change: number;
  readonly chance: Derived;
  readonly biteFactor: Derived;
}

/** A tenth of a millimetre either way: what printers differ by, and what has decided between holding and falling in. */
const CHANGES = [-0.1, 0, 0.1] as const;

export function sensitivityOf({ dimensions, hole }: JointAssessment): readonly Sensitivity[] {
  const { expected, standardDeviation } = hole.window;
  return CHANGES.map((change) => {
    const bore = change === 0 ? expected : entryFrom(changedBore(expected, change));
    return {
      change,
      chance: fitWindow(dimensions, hole.intended, { expected: bore, standardDeviation }).chance,
      biteFactor: biteFactor(dimensions, hole.intended, bore),
    };
  });
}
