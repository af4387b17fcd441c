import { type Chance, type ChanceResult, chanceOf } from '../../../core/chance/chance-result.ts';
import type { ForceHistogram } from '../../../core/chance/force-bins.ts';
import { type Name, nameOver, type Scale, scaleTo } from './plot.ts';

const NAME_ROW = 22;
const PLOT_HEIGHT = 150;
/** Bars lower than this share of the highest one do not show. */
const VISIBLE = 0.004;
/** Bars that a line of the table gathers. */
const BARS_A_LINE = 4;

export interface ForceShapes {
  readonly height: number;
  readonly base: number;
  readonly scale: Scale;
  /** Filled outline of the clamp force, open outline of what the plastic bears; from the base and back to it. */
  readonly clampForce: string;
  readonly plastic: string;
  readonly names: readonly (Name & { readonly y: number; readonly foot: number })[];
}

const highest = ({ bars }: ForceHistogram): number => Math.max(...bars);
const widthOfBar = ({ top, bars }: ForceHistogram): number => top / bars.length;

/** Places of both distributions, drawn to one scale: equal areas are equal counts of joints. */
export function forceShapes(
  { clampForce, weakestPlastic }: Pick<ChanceResult, 'clampForce' | 'weakestPlastic'>,
  width: number,
  words: { readonly clampForce: string; readonly plastic: string },
): ForceShapes {
  const most = Math.max(highest(clampForce), highest(weakestPlastic));
  const last = Math.max(
    ...[clampForce, weakestPlastic].map(({ bars }) => bars.findLastIndex((count) => count > VISIBLE * most)),
  );
  const scale = scaleTo((last + 1) * widthOfBar(clampForce), { width, unit: 'N' });
  const top = 2 * NAME_ROW + 8;
  const base = top + PLOT_HEIGHT;
  const yOf = (count: number) => base - (count / most) * PLOT_HEIGHT;
  const outline = (histogram: ForceHistogram) => {
    const bars = histogram.bars.slice(0, last + 1);
    const steps = bars.map((count) => `V${yOf(count).toFixed(1)}`);
    const ends = bars.map((_, bar) => `H${scale.xOf((bar + 1) * widthOfBar(histogram)).toFixed(1)}`);
    return `M${scale.xOf(0)} ${base}${steps.map((step, bar) => `${step}${ends[bar] ?? ''}`).join('')}V${base}`;
  };
  const nameOf = (text: string, histogram: ForceHistogram, row: number) => {
    const peak = histogram.bars.indexOf(highest(histogram));
    const name = nameOver(text, scale.xOf((peak + 0.5) * widthOfBar(histogram)), width);
    return { ...name, y: 16 + row * NAME_ROW, foot: yOf(highest(histogram)) - 2 };
  };
  return {
    height: base + 26,
    base,
    scale,
    clampForce: outline(clampForce),
    plastic: outline(weakestPlastic),
    names: [nameOf(words.plastic, weakestPlastic, 0), nameOf(words.clampForce, clampForce, 1)].filter(
      (_, index) => highest(index === 0 ? weakestPlastic : clampForce) > 0,
    ),
  };
}

/** One line of the table: forces from … to [N], and the joints within. */
export interface ForceLine {
  readonly from: number;
  /** Absent: everything beyond. */
  readonly to?: number;
  readonly clampForce: Chance;
  readonly plastic: Chance;
}

/** The same as a table: four bars a line, what lies below and beyond in lines of their own. */
export function forceLines({
  clampForce,
  weakestPlastic,
  samples,
}: Pick<ChanceResult, 'clampForce' | 'weakestPlastic' | 'samples'>): readonly ForceLine[] {
  const width = widthOfBar(clampForce);
  const within = ({ bars }: ForceHistogram, first: number) =>
    chanceOf(
      bars.slice(first, first + BARS_A_LINE).reduce((sum, count) => sum + count, 0),
      samples,
    );
  const lines = Array.from({ length: clampForce.bars.length / BARS_A_LINE }, (_, line) => ({
    from: line * BARS_A_LINE * width,
    to: (line + 1) * BARS_A_LINE * width,
    clampForce: within(clampForce, line * BARS_A_LINE),
    plastic: within(weakestPlastic, line * BARS_A_LINE),
  }));
  return [
    ...lines,
    {
      from: clampForce.top,
      clampForce: chanceOf(clampForce.above, samples),
      plastic: chanceOf(weakestPlastic.above, samples),
    },
  ];
}
