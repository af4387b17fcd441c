import { memo, useMemo } from 'react';
import { Area, ComposedChart, Line, ReferenceLine, ZIndexLayer } from 'recharts';
import type { HoleCalibration } from '../../core/holes/calibrate-holes.ts';
import { decimalText, diameterNumber } from '../../wording/amount.ts';
import styles from './charts.module.css';
import { ErrorLineNames, ErrorMarks } from './hole-error-marks.tsx';
import { HoleErrorTables } from './hole-error-tables.tsx';
import { type HoleErrors, holeErrors } from './hole-errors.ts';
import { LateFigure } from './late-figure.tsx';
import { endsOf, LevelAxis, NAMES_ON_TOP, PLAIN_CHART, PLAIN_LINE, UprightAxis } from './plain-axes.tsx';

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
      <HoleErrorTables calibration={calibration} found={found} isRead={isRead} />
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
  const ends = { xDomain: endsOf(diameters), yDomain: endsOf(errors) };
  return (
    <ComposedChart width={width} height={HEIGHT} data={samples} {...PLAIN_CHART}>
      <LevelAxis of="drawn" ticks={diameters} />
      <UprightAxis ticks={errors} texts={errors.map((tick) => decimalText(tick, decimals))} />
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
        <Line dataKey="prior" {...PLAIN_LINE} stroke="var(--ink2)" strokeWidth={1.1} strokeDasharray="5 4" />
      ) : null}
      <Line dataKey="expected" {...PLAIN_LINE} stroke="var(--ink)" strokeWidth={2.2} />
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
        <ErrorMarks found={found} {...ends} />
        <ErrorLineNames found={found} isRead={isRead} {...ends} />
      </ZIndexLayer>
    </ComposedChart>
  );
}
