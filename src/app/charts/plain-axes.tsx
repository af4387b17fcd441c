import { memo } from 'react';
import { XAxis, YAxis } from 'recharts';

interface PlainAxisProps {
  /** In rising order; the axis goes from the first to the last. */
  readonly ticks: readonly number[];
  /** One for each tick; absent: the numbers as they are. */
  readonly texts?: readonly string[];
}

export const AXIS = { stroke: 'var(--hair)', tick: { fill: 'var(--ink2)', fontSize: 13 } } as const;

/** Nothing is found out from the data or by measuring texts: the ticks say it all. */
const GIVEN = { ...AXIS, type: 'number', interval: 0, niceTicks: 'none', allowDataOverflow: true } as const;

/** Above areas, lines and axes of a chart. */
export const NAMES_ON_TOP = 1500;
const UPRIGHT_WIDTH = 52;

/** First and last tick. */
export const endsOf = (ticks: readonly number[]): [number, number] => [ticks[0] ?? 0, ticks.at(-1) ?? 1];

const isSameList = <Item,>(one: readonly Item[] = [], other: readonly Item[] = []): boolean =>
  one.length === other.length && one.every((item, index) => item === other[index]);

// Another axis has everything in its chart worked out anew; an equal one does not.
const isSameAxis = (one: PlainAxisProps, other: PlainAxisProps): boolean =>
  isSameList(one.ticks, other.ticks) && isSameList(one.texts, other.texts);

const settingsOf = ({ ticks, texts }: PlainAxisProps) => ({
  ...GIVEN,
  domain: endsOf(ticks),
  ticks: [...ticks],
  ...(texts === undefined ? {} : { tickFormatter: (tick: number) => texts[ticks.indexOf(tick)] ?? '' }),
});

/** The level axis; of: the key of the data that runs along it. */
export const LevelAxis = memo(
  function LevelAxis({ of, ...props }: PlainAxisProps & { readonly of: string }) {
    return <XAxis dataKey={of} {...settingsOf(props)} />;
  },
  (one, other) => one.of === other.of && isSameAxis(one, other),
);

export const UprightAxis = memo(function UprightAxis(props: PlainAxisProps) {
  return <YAxis width={UPRIGHT_WIDTH} {...settingsOf(props)} />;
}, isSameAxis);

/** What all charts with two axes share; one object, since another margin is another chart. */
export const PLAIN_CHART = {
  margin: { top: 12, right: 12, bottom: 0, left: 0 },
  accessibilityLayer: false,
  style: { fontFamily: 'var(--narrow)' },
} as const;

/** Room for names over the plot. */
export const WITH_NAMES_ABOVE = { ...PLAIN_CHART.margin, top: 22 };

/** A line without marks, which stands still. */
export const PLAIN_LINE = { isAnimationActive: false, dot: false, activeDot: false } as const;
