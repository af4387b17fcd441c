import type { ChanceResult } from '../core/chance/chance-result.ts';
import type { DrawnRange } from '../core/chance/drawn-from.ts';
import { settled } from '../core/steps/steps.ts';

const settledRange = ({ low, high }: DrawnRange): DrawnRange => ({ low: settled(low), high: settled(high) });

/** What a sampling came to with every derivation made in full: a message between threads copies values only. */
export function sentResult(result: ChanceResult): ChanceResult {
  const { clampForceQuantiles: forces, drawnFrom: from } = result;
  return {
    ...result,
    clampForceQuantiles: {
      low: settled(forces.low),
      median: settled(forces.median),
      high: settled(forces.high),
    },
    drawnFrom: {
      threadFriction: settledRange(from.threadFriction),
      headFriction: settledRange(from.headFriction),
      ...(from.slipFriction && { slipFriction: settledRange(from.slipFriction) }),
      toolDeviation: settled(from.toolDeviation),
      ...(from.preloadLeft && { preloadLeft: settledRange(from.preloadLeft) }),
      expectedBore: settled(from.expectedBore),
      boreDeviation: settled(from.boreDeviation),
      knurlDiameter: settled(from.knurlDiameter),
      knurlDeviation: settled(from.knurlDeviation),
    },
  };
}
