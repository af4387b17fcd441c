import { memo, useMemo } from 'react';
import { Area, ComposedChart, Line, ReferenceLine, usePlotArea, XAxis, YAxis, ZIndexLayer } from 'recharts';
import type { HoleCalibration } from '../../core/holes/calibrate-holes.ts';
import { decimalText, diameterNumber } from '../../wording/amount.ts';
import styles from './charts.module.css';
import { HoleErrorTables } from './hole-error-tables.tsx';
import { type HoleErrors, holeErrors } from './hole-errors.ts';
import { LateFigure } from './late-figure.tsx';
import { AXIS, NAMES_ON_TOP } from './length-panel.tsx';
import { slopeLabel } from './slope-label.ts';

interface HoleErrorsChartProps {
  readonly calibration: HoleCalibration;
  /** Place in the table of each point. */
  readonly places: readonly number[];
  readonly title: string;
  /** Hole of the joint, mm; absent: it is not drawn. */
  readonly wanted: number | undefined;
}

const HEIGHT = 330;
const NARROW = 560;
/** More points than these would hide one another behind their bars. */
const MOST_BARS = 60;
const RADIUS = 4;
/** Share of the scale where the name of the curve before the readings ends. */
const PRIOR_NAMED = 0.74;

/** Drawn diameter against what the printer makes of it. */
export default function HoleErrorsChart({ calibration, places, title, wanted }: HoleErrorsChartProps) {
  const content = useMemo(
    () => ({ calibration, places, title, wanted }),
    [calibration, places, title, wanted],
  );
  return <LateFigure content={content} drawing={HoleErrorsDrawing} />;
}

const HoleErrorsDrawing = memo(function HoleErrorsDrawing({
  calibration,
  places,
  title,
  wanted,
  width,
}: HoleErrorsChartProps & { readonly width: number }) {
  const found = useMemo(() => holeErrors(calibration, { places, wanted }), [calibration, places, wanted]);
  const isRead = calibration.count > 0;
  return (
    <>
      <figcaption className={styles['caption']}>
        <h3>{title}</h3>
        <span className="line">
          band: 9 of 10 of the next holes;{' '}
          {isRead ? 'dots: holes read, open ones far from the others' : '≈ estimate'}
        </span>
      </figcaption>
      {/* Inert: the chart library listens for the focus on its layers, which makes each of them a stop of Tab. */}
      <div aria-hidden="true" inert>
        <p className={styles['title']}>printed less drawn, mm</p>
        <ErrorChart found={found} width={width} wanted={wanted} isRead={isRead} />
        <p className={styles['axis']}>drawn diameter, mm</p>
      </div>
      <HoleErrorTables found={found} isRead={isRead} />
    </>
  );
});

interface ErrorChartProps {
  readonly found: HoleErrors;
  readonly width: number;
  readonly wanted: number | undefined;
  readonly isRead: boolean;
}

function ErrorChart({ found, width, wanted, isRead }: ErrorChartProps) {
  const { samples, diameters, errors, decimals } = found;
  const xDomain: [number, number] = [diameters[0] ?? 0, diameters.at(-1) ?? 1];
  const yDomain: [number, number] = [errors[0] ?? -1, errors.at(-1) ?? 1];
  const ends = { xDomain, yDomain };
  return (
    <ComposedChart
      width={width}
      height={HEIGHT}
      data={[...samples]}
      margin={{ top: 12, right: 12, bottom: 0, left: 0 }}
      accessibilityLayer={false}
      style={{ fontFamily: 'var(--narrow)' }}
    >
      <XAxis dataKey="drawn" type="number" domain={xDomain} ticks={[...diameters]} {...AXIS} />
      <YAxis
        type="number"
        domain={yDomain}
        ticks={[...errors]}
        tickFormatter={(tick: number) => decimalText(tick, decimals)}
        width={52}
        {...AXIS}
      />
      <Area
        dataKey="band"
        isAnimationActive={false}
        stroke="none"
        fill="var(--band2)"
        fillOpacity={1}
        activeDot={false}
      />
      <ReferenceLine y={0} stroke="var(--hair)" />
      {isRead ? (
        <Line
          dataKey="prior"
          isAnimationActive={false}
          dot={false}
          activeDot={false}
          stroke="var(--ink2)"
          strokeWidth={1.1}
          strokeDasharray="5 4"
        />
      ) : null}
      <Line
        dataKey="expected"
        isAnimationActive={false}
        dot={false}
        activeDot={false}
        stroke="var(--ink)"
        strokeWidth={2.2}
      />
      {wanted === undefined ? null : (
        <ReferenceLine
          x={wanted}
          stroke="var(--brass-line)"
          strokeWidth={1.4}
          label={{
            value: width < NARROW ? `⌀ ${diameterNumber(wanted)}` : `⌀ ${diameterNumber(wanted)}, this joint`,
            position: 'insideBottomLeft',
            fill: 'var(--ink)',
            fontSize: 14,
          }}
        />
      )}
      <ZIndexLayer zIndex={NAMES_ON_TOP}>
        <Marks found={found} {...ends} />
        <LineNames found={found} isRead={isRead} {...ends} />
      </ZIndexLayer>
    </ComposedChart>
  );
}

interface InFrame {
  readonly found: HoleErrors;
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
}

/** Every hole, with the uncertainty of its reading; a hole far from the others is open and has its number. */
function Marks({ found: { marks }, xDomain, yDomain }: InFrame) {
  const area = usePlotArea();
  if (area === undefined) return null;
  const across = area.width / (xDomain[1] - xDomain[0]);
  const up = area.height / (yDomain[1] - yDomain[0]);
  const level = (error: number) => area.y + area.height - (error - yDomain[0]) * up;
  const hasBars = marks.length <= MOST_BARS;
  return marks.map(({ number, drawn, error, standardUncertainty, outlier }) => {
    const x = area.x + (drawn - xDomain[0]) * across;
    return (
      <g key={number}>
        {hasBars ? (
          <line
            x1={x}
            x2={x}
            y1={level(error - standardUncertainty)}
            y2={level(error + standardUncertainty)}
            stroke="var(--ink)"
            strokeWidth={1}
          />
        ) : null}
        <circle
          cx={x}
          cy={level(error)}
          r={RADIUS}
          fill={outlier ? 'var(--paper)' : 'var(--ink)'}
          stroke={outlier ? 'var(--ink)' : 'var(--paper)'}
          strokeWidth={outlier ? 1.6 : 1}
        />
        {outlier ? (
          <text x={x + 8} y={level(error) + 5} fontSize={13} fill="var(--ink)">
            hole {number}
          </text>
        ) : null}
      </g>
    );
  });
}

/** The names of the lines, lying along them. */
function LineNames({ found: { samples }, isRead, xDomain, yDomain }: InFrame & { readonly isRead: boolean }) {
  const area = usePlotArea();
  if (area === undefined) return null;
  const lines = [
    ...(isRead ? [{ name: 'an unknown printer', of: 'prior', below: true } as const] : []),
    { name: isRead ? 'this printer' : 'an unknown printer', of: 'expected', below: false } as const,
    { name: '1 in 20 larger', of: 'high', below: true } as const,
    { name: '1 in 20 smaller', of: 'low', below: false } as const,
  ];
  return lines.map(({ name, of, below }) => {
    // Its name lies farther to the left, where it meets no other.
    const named = of === 'prior' ? samples.slice(0, Math.round(PRIOR_NAMED * samples.length)) : samples;
    const values = named.map((sample) => ({
      x: sample.drawn,
      y: of === 'high' ? sample.band[1] : of === 'low' ? sample.band[0] : sample[of],
    }));
    const raised = values.map(({ x, y }) => ({ x, y: y - yDomain[0] }));
    const place = slopeLabel(name, raised, {
      area,
      xDomain,
      yDomain: [0, yDomain[1] - yDomain[0]],
      below,
    });
    return (
      place && (
        <text
          key={of}
          x={place.x}
          y={place.y}
          transform={`rotate(${place.angle} ${place.x} ${place.y})`}
          textAnchor="end"
          fontSize={13}
          fill={of === 'expected' ? 'var(--ink)' : 'var(--ink2)'}
        >
          {name}
        </text>
      )
    );
  });
}
