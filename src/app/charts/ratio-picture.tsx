import { memo, useMemo } from 'react';
import { ComposedChart, Line, ReferenceLine, XAxis, YAxis, ZIndexLayer } from 'recharts';
import styles from './charts.module.css';
import { LateFigure } from './late-figure.tsx';
import { AXIS, NAMES_ON_TOP } from './plain-axes.tsx';
import { type RatioRow, RatioRows } from './ratio-rows.tsx';
import { ratioTicks } from './ratio-ticks.ts';

interface RatioPictureProps {
  readonly rows: readonly RatioRow[];
  readonly title: string;
  /** What lies below the line of the ratios. */
  readonly against: string;
}

const MOST_WIDTH = 860;
/** From here on there is room beside the intervals for what it takes to see a difference. */
const ROOM_BESIDE = 640;
const ROW = { wide: 56, narrow: 76 } as const;
const AXIS_HEIGHT = 30;
const SIDE = { left: 14, right: 14, beside: 190 } as const;

/** For the chart library, which draws no axis without a line. */
const UNSEEN = [0, 1].map((place) => ({ ratio: 1, place }));

/** Ratios with their intervals over an axis on which twice and half lie equally far from 1. */
export default function RatioPicture({ rows, title, against }: RatioPictureProps) {
  const content = useMemo(() => ({ rows, title, against }), [rows, title, against]);
  return <LateFigure content={content} drawing={RatioDrawing} />;
}

const RatioDrawing = memo(function RatioDrawing({
  rows,
  title,
  against,
  width,
}: RatioPictureProps & { readonly width: number }) {
  const own = Math.min(width, MOST_WIDTH);
  const ends = rows.flatMap(({ ratio }) => (ratio ? [ratio.low, ratio.high] : []));
  const ticks = ratioTicks(Math.min(1, ...ends), Math.max(1, ...ends));
  const domain: [number, number] = [ticks[0] ?? 0.5, ticks.at(-1) ?? 2];
  const isBeside = own >= ROOM_BESIDE;
  const right = isBeside ? SIDE.beside : SIDE.right;
  return (
    <>
      <figcaption className={styles['caption']}>
        <h4>{title}</h4>
        <span className="line">dot: ratio; line: its 95 % interval</span>
      </figcaption>
      {/* Inert: the chart library listens for the focus on its layers, which makes each of them a stop of Tab. */}
      <div aria-hidden="true" inert style={{ width: own }}>
        <ComposedChart
          width={own}
          height={rows.length * (isBeside ? ROW.wide : ROW.narrow) + AXIS_HEIGHT}
          margin={{ top: 0, right, bottom: 0, left: SIDE.left }}
          accessibilityLayer={false}
          style={{ fontFamily: 'var(--narrow)' }}
        >
          <XAxis
            dataKey="ratio"
            type="number"
            scale="log"
            domain={domain}
            ticks={[...ticks]}
            interval={0}
            allowDataOverflow
            height={AXIS_HEIGHT}
            {...AXIS}
          />
          <YAxis type="number" domain={[0, 1]} hide width={0} />
          <Line
            data={UNSEEN}
            dataKey="place"
            isAnimationActive={false}
            stroke="none"
            dot={false}
            activeDot={false}
          />
          <ReferenceLine x={1} stroke="var(--ink)" strokeWidth={1.2} />
          <ZIndexLayer zIndex={NAMES_ON_TOP}>
            <RatioRows rows={rows} domain={domain} isBeside={isBeside} />
          </ZIndexLayer>
        </ComposedChart>
        <p className={styles['axis']} style={{ paddingRight: right }}>
          times as strong as “{against}”
        </p>
      </div>
    </>
  );
});
