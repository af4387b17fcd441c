import { type Derived, type Entry, entry, entryFrom } from '../sources/derived.ts';
import type { ForceBins } from './force-bins.ts';

/**
 * Force that a share of the counted ones stays below, by a straight line inside the bin.
 *
 *     F = (i + (p · n − k)/h) · w        n counted, k in the i bins below, h in the bin itself, w its width
 *
 * @param from - bins with at least one count
 * @param share - p [-], 0 < p < 1
 * @returns force [N], within top/3840 of the sampled quantile; 0 or the top where the quantile lies outside the bins
 * @source own-model counts of forces
 */
export function forceQuantile(from: ForceBins, share: number): Derived {
  const { bins, top } = from;
  const counted = from.below + from.above + bins.reduce((sum, count) => sum + count, 0);
  const common = [entry('p_q', share, '-'), entry('n_j', counted, '-')];
  let below = from.below;
  if (share * counted <= below) return quantile(0, '0', [...common, entry('k_q', below, '-')]);
  const width = top / bins.length;
  for (const [bin, count] of bins.entries()) {
    const left = share * counted - below;
    if (count > 0 && left <= count) {
      return quantile((bin + left / count) * width, '(i_q + (p_q · n_j − k_q)/h_q) · w_q', [
        ...common,
        entry('i_q', bin, '-'),
        entry('k_q', below, '-'),
        entry('h_q', count, '-'),
        entryFrom(widthOf(top, bins.length)),
      ]);
    }
    below += count;
  }
  return quantile(top, 'F_top', [...common, entry('k_q', below, '-'), entry('F_top', top, 'N')]);
}

const widthOf = (top: number, steps: number): Derived => ({
  symbol: 'w_q',
  value: top / steps,
  unit: 'N',
  formula: 'F_top/n_w',
  entries: [entry('F_top', top, 'N'), entry('n_w', steps, '-')],
  source: 'own-model',
  standing: 'estimate',
});

const quantile = (value: number, formula: string, entries: readonly Entry[]): Derived => ({
  symbol: 'F_q',
  value,
  unit: 'N',
  formula,
  entries,
  source: 'own-model',
  standing: 'estimate',
});
