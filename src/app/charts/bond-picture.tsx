import { memo, useMemo } from 'react';
import { Area, ComposedChart, Line, ReferenceDot, XAxis, YAxis } from 'recharts';
import type { SetupEvidence } from '../../core/bench/evidence.ts';
import { type BondCurves, bondCurves, type DensityPoint } from './bond-curves.ts';
import { BondTwin } from './bond-twin.tsx';
import styles from './charts.module.css';
import { LateFigure } from './late-figure.tsx';
import { tickTexts } from './nice-ticks.ts';
import { AXIS } from './plain-axes.tsx';

interface BondPictureProps {
  readonly setup: SetupEvidence;
  /** Id of the insert whose next joint is drawn. */
  readonly size: string;
  readonly name: string;
}

const HEIGHT = 250;
const MOST_WIDTH = 720;
/** Height of the row of coupons over that of the highest peak. */
const MARKS_AT = 0.055;
const HEADROOM = 1.14;

/** The bond factor of the next joint before and after the tests, with the coupons that moved it. */
export default function BondPicture({ setup, size, name }: BondPictureProps) {
  const content = useMemo(() => ({ setup, size, name }), [setup, size, name]);
  return <LateFigure content={content} drawing={BondDrawing} />;
}

const BondDrawing = memo(function BondDrawing({
  setup,
  size,
  name,
  width,
}: BondPictureProps & { readonly width: number }) {
  const curves = useMemo(() => bondCurves(setup, size), [setup, size]);
  const own = Math.min(width, MOST_WIDTH);
  return (
    <>
      <figcaption className={styles['caption']}>
        <h3>Bond factor of the next joint with {name}</h3>
        <span className="line">dots: its coupons; full: gave way, open: held at least this</span>
      </figcaption>
      {/* Inert: the chart library listens for the focus on its layers, which makes each of them a stop of Tab. */}
      <div aria-hidden="true" inert style={{ width: own }}>
        <DensityChart curves={curves} width={own} />
        <p className={styles['axis']}>bond factor</p>
      </div>
      <BondTwin curves={curves} name={name} />
    </>
  );
});

function DensityChart({ curves, width }: { readonly curves: BondCurves; readonly width: number }) {
  const { points, ticks, greatest, marks } = curves;
  const end = ticks.at(-1) ?? 1;
  const texts = tickTexts(ticks, '-');
  return (
    <ComposedChart
      width={width}
      height={HEIGHT}
      data={[...points]}
      margin={{ top: 8, right: 12, bottom: 0, left: 12 }}
      accessibilityLayer={false}
      style={{ fontFamily: 'var(--narrow)' }}
    >
      <XAxis
        dataKey="bond"
        type="number"
        domain={[0, end]}
        ticks={[...ticks]}
        tickFormatter={(tick: number) => texts[ticks.indexOf(tick)] ?? ''}
        {...AXIS}
      />
      <YAxis type="number" domain={[0, greatest * HEADROOM]} hide />
      <Area
        dataKey="before"
        isAnimationActive={false}
        stroke="var(--hair)"
        fill="var(--band2)"
        fillOpacity={1}
      />
      <Line
        dataKey="after"
        isAnimationActive={false}
        dot={false}
        activeDot={false}
        stroke="var(--ink)"
        strokeWidth={2.2}
      />
      {marks.map(({ testId, says, bond }) => (
        <ReferenceDot
          key={testId}
          x={bond.value}
          y={greatest * MARKS_AT}
          r={4.5}
          fill={says === 'broke' ? 'var(--ink)' : 'var(--paper)'}
          stroke={says === 'broke' ? 'var(--paper)' : 'var(--ink)'}
          strokeWidth={says === 'broke' ? 1 : 1.6}
        />
      ))}
      <CurveName at={peakOf(points, 'before', 'right')} text="without tests" ink="var(--ink2)" />
      <CurveName at={peakOf(points, 'after', 'peak')} text="with them" ink="var(--ink)" />
    </ComposedChart>
  );
}

interface Place {
  readonly bond: number;
  readonly density: number;
}

/** The peak of a curve; or where it has come down to half of it on the right, out of the way of the other one. */
function peakOf(points: readonly DensityPoint[], key: 'before' | 'after', where: 'peak' | 'right'): Place {
  const most = Math.max(...points.map((point) => point[key]));
  const top = points.findIndex((point) => point[key] === most);
  const right = points.find((point, place) => place > top && point[key] < most / 3);
  const found = where === 'peak' ? points[top] : right;
  return { bond: found?.bond ?? 0, density: found?.[key] ?? 0 };
}

function CurveName({ at, text, ink }: { readonly at: Place; readonly text: string; readonly ink: string }) {
  return (
    <ReferenceDot
      x={at.bond}
      y={at.density}
      r={0}
      label={{
        value: text,
        position: text === 'with them' ? 'top' : 'right',
        fill: ink,
        fontSize: 14,
        stroke: 'var(--paper)',
        strokeWidth: 4,
        paintOrder: 'stroke',
      }}
    />
  );
}
