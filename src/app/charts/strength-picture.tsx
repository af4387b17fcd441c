import { memo, useMemo } from 'react';
import { Area, ComposedChart, Line, ReferenceDot, usePlotArea, ZIndexLayer } from 'recharts';
import type { StrengthFit } from '../../core/bench/strength-fit.ts';
import type { StrengthPoint } from '../../core/bench/strength-points.ts';
import { decimalText, forceNumber } from '../../wording/amount.ts';
import { DIMENSION_NAMES } from '../../wording/strength-fit.ts';
import styles from './charts.module.css';
import { LateFigure } from './late-figure.tsx';
import { tickTexts } from './nice-ticks.ts';
import { endsOf, LevelAxis, NAMES_ON_TOP, PLAIN_CHART, PLAIN_LINE, UprightAxis } from './plain-axes.tsx';
import { slopeLabel } from './slope-label.ts';
import { type StrengthLines, type StrengthPanel, strengthLines } from './strength-lines.ts';

interface StrengthPictureProps {
  readonly found: Extract<StrengthFit, { readonly kind: 'fitted' }>;
  readonly points: readonly StrengthPoint[];
  readonly title: string;
}

const HEIGHT = 250;
const MOST_WIDTH = 560;
const LEAST_PANEL = 250;
const GAP = 28;

/** Measured strengths over a size, with the line of the regression and its bands. */
export default function StrengthPicture({ found, points, title }: StrengthPictureProps) {
  const content = useMemo(() => ({ found, points, title }), [found, points, title]);
  return <LateFigure content={content} drawing={StrengthDrawing} />;
}

const StrengthDrawing = memo(function StrengthDrawing({
  found,
  points,
  title,
  width,
}: StrengthPictureProps & { readonly width: number }) {
  const lines = useMemo(() => strengthLines(found, points), [found, points]);
  const { panels } = lines;
  const columns = Math.max(1, Math.min(panels.length, Math.floor((width + GAP) / (LEAST_PANEL + GAP))));
  const panelWidth = Math.min(Math.floor((width - GAP * (columns - 1)) / columns), MOST_WIDTH);
  const isForce = found.units.response === 'N';
  return (
    <>
      <figcaption className={styles['caption']}>
        <h4>{title}</h4>
        <span className="line">dots: coupons; band: their mean, 95 %</span>
      </figcaption>
      {/* Inert: the chart library listens for the focus on its layers, which makes each of them a stop of Tab. */}
      <div aria-hidden="true" inert className={styles['panels']} style={{ gap: GAP }}>
        {panels.map((panel) => (
          <div key={panel.kept ?? ''} style={{ width: panelWidth }}>
            {panel.kept === undefined ? null : (
              <p className={styles['title']}>knurl ⌀ {decimalText(panel.kept, 1)} mm</p>
            )}
            <Panel panel={panel} lines={lines} isForce={isForce} width={panelWidth} />
            <p className={styles['axis']}>
              {isForce ? 'load, N' : 'torque, N·m'}, over {DIMENSION_NAMES[lines.axis]}, mm
            </p>
          </div>
        ))}
      </div>
    </>
  );
});

interface PanelProps {
  readonly panel: StrengthPanel;
  readonly lines: StrengthLines;
  readonly isForce: boolean;
  readonly width: number;
}

function Panel({ panel, lines, isForce, width }: PanelProps) {
  const { sizes, loads } = lines;
  const loadTexts = isForce ? loads.map(forceNumber) : tickTexts(loads, 'N·m');
  const sizeTexts = tickTexts(sizes.length < 2 ? [0, 1] : sizes, 'mm');
  return (
    <ComposedChart width={width} height={HEIGHT} data={panel.line} {...PLAIN_CHART}>
      <LevelAxis of="at" ticks={sizes} texts={sizes.map((_, index) => sizeTexts[index] ?? '')} />
      <UprightAxis ticks={loads} texts={loadTexts} />
      <Area
        dataKey="mean"
        isAnimationActive={false}
        stroke="none"
        fill="var(--band2)"
        fillOpacity={1}
        activeDot={false}
      />
      <Line dataKey="nextLow" {...PLAIN_LINE} stroke="var(--ink2)" strokeDasharray="5 4" />
      <Line dataKey="nextHigh" {...PLAIN_LINE} stroke="var(--ink2)" strokeDasharray="5 4" />
      <Line dataKey="fit" {...PLAIN_LINE} stroke="var(--ink)" strokeWidth={2} />
      <ZIndexLayer zIndex={NAMES_ON_TOP}>
        <Names line={panel.line} xDomain={endsOf(sizes)} yDomain={endsOf(loads)} />
      </ZIndexLayer>
      {panel.points.map(({ testId, at, load }) => (
        <ReferenceDot key={testId} x={at} y={load} r={4.5} fill="var(--ink)" stroke="var(--paper)" />
      ))}
    </ComposedChart>
  );
}

interface NamesProps {
  readonly line: StrengthPanel['line'];
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
}

/** The name of the dashed lines, lying along each that is in sight. */
function Names({ line, xDomain, yDomain }: NamesProps) {
  const area = usePlotArea();
  if (area === undefined) return null;
  return (['nextHigh', 'nextLow'] as const).map((key) => {
    const values = line.map((place) => ({ x: place.at, y: place[key] }));
    const inSight = values.filter(({ y }) => y >= 0);
    const name = 'next coupon, 95 %';
    const place = slopeLabel(name, inSight, { area, xDomain, yDomain, below: key === 'nextLow' });
    return (
      place && (
        <text
          key={key}
          x={place.x}
          y={place.y}
          transform={`rotate(${place.angle} ${place.x} ${place.y})`}
          textAnchor="end"
          fontSize={13}
          fill="var(--ink2)"
          stroke="var(--paper)"
          strokeWidth={3}
          paintOrder="stroke"
        >
          {name}
        </text>
      )
    );
  });
}
