import type { JointAssessment, Limit, TorqueWindow } from '../../core/joint/assessment.ts';

type Window = Extract<TorqueWindow, { readonly kind: 'window' }>;

/** Below this share of its top a window is hard to hit. */
const NARROW = 0.15;

/** How the answer stands in its window, for the line beneath the ruler. */
export type DialMargin =
  | { readonly kind: 'below-top'; readonly share: number }
  | { readonly kind: 'narrow'; readonly width: number };

/** How far the dial stays below the top of the window, or how wide a window is that is hard to hit. */
export function dialMargin({ least, most, dial }: Window): DialMargin {
  const width = most.value - least.value;
  return width < NARROW * most.value
    ? { kind: 'narrow', width }
    : { kind: 'below-top', share: (most.value - dial.value) / most.value };
}

/** What the insert holds beside what asks for it; absent where nothing does. */
export function holdingLimit({ limits, holdsMode }: JointAssessment): Limit | undefined {
  return limits.find((limit) => limit.mode === holdsMode && limit.factor !== undefined);
}
