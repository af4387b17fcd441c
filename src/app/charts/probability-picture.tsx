import { memo, useMemo } from 'react';
import { ComposedChart, Line, ReferenceDot, XAxis, YAxis } from 'recharts';
import type { ProbabilityPlot } from '../../core/evidence/probability-plot.ts';
import { normalQuantile } from '../../core/numerics/normal-distribution.ts';
import type { CoreUnit } from '../../core/sources/derived.ts';
import { percentText } from '../../wording/amount.ts';
import { tickText } from './amount-ticks.ts';
import styles from './charts.module.css';
import { LateFigure } from './late-figure.tsx';
import { AXIS } from './plain-axes.tsx';
import { probabilityLines } from './probability-lines.ts';

interface ProbabilityPictureProps {
  readonly plot: Extract<ProbabilityPlot, { readonly kind: 'plotted' }>;
  readonly unit: CoreUnit;
  readonly name: string;
}

const HEIGHT = 250;
const MOST_WIDTH = 560;
const SHARES = [0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95];
const TICKS = SHARES.map(normalQuantile);
const shareAt = (score: number): string => percentText(SHARES[TICKS.indexOf(score)] ?? 0.5);

/** Values over the share of like parts below them; a straight row is a normal scatter, the dashed curve a lognormal one. */
export default function ProbabilityPicture({ plot, unit, name }: ProbabilityPictureProps) {
  const content = useMemo(() => ({ plot, unit, name }), [plot, unit, name]);
  return <LateFigure content={content} drawing={ProbabilityDrawing} />;
}

const ProbabilityDrawing = memo(function ProbabilityDrawing({
  plot,
  unit,
  name,
  width,
}: ProbabilityPictureProps & { readonly width: number }) {
  const { normal, lognormal, ticks } = useMemo(() => probabilityLines(plot.points), [plot]);
  const own = Math.min(width, MOST_WIDTH);
  return (
    <>
      <figcaption className={styles['caption']}>
        <h3>Probability plot: {name}</h3>
        <span className="line">line: normal; dashed: lognormal</span>
      </figcaption>
      {/* Inert: the chart library listens for the focus on its layers, which makes each of them a stop of Tab. */}
      <div aria-hidden="true" inert style={{ width: own }}>
        <ComposedChart
          width={own}
          height={HEIGHT}
          margin={{ top: 8, right: 16, bottom: 0, left: 0 }}
          accessibilityLayer={false}
          style={{ fontFamily: 'var(--narrow)' }}
        >
          <XAxis
            dataKey="value"
            type="number"
            domain={[ticks[0] ?? 0, ticks.at(-1) ?? 1]}
            ticks={[...ticks]}
            tickFormatter={(tick: number) => tickText(tick, unit)}
            allowDataOverflow
            {...AXIS}
          />
          <YAxis
            type="number"
            domain={[-2, 2]}
            ticks={TICKS}
            tickFormatter={shareAt}
            width={52}
            interval={0}
            {...AXIS}
          />
          <Line
            data={[...normal]}
            dataKey="score"
            isAnimationActive={false}
            dot={false}
            activeDot={false}
            stroke="var(--ink)"
          />
          <Line
            data={[...lognormal]}
            dataKey="score"
            isAnimationActive={false}
            dot={false}
            activeDot={false}
            stroke="var(--ink2)"
            strokeDasharray="5 4"
          />
          {plot.points.map(({ value, score }) => (
            <ReferenceDot key={score} x={value} y={score} r={4} fill="var(--ink)" stroke="var(--paper)" />
          ))}
        </ComposedChart>
        <p className={styles['axis']}>share below, over {unit === 'N' ? 'load, N' : 'torque, N·m'}</p>
      </div>
    </>
  );
});
