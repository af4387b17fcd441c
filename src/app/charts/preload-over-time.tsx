import { Area, ComposedChart, Line, ReferenceLine, usePlotArea, ZIndexLayer } from 'recharts';
import type { Joint } from '../../core/joint/joint.ts';
import { RETIGHTENING_HOURS } from '../../core/relaxation/retightening.ts';
import type { PreloadCurve } from '../../core/service/curves.ts';
import { decimalText, durationText, percentText } from '../../wording/amount.ts';
import styles from './charts.module.css';
import {
  LevelAxis,
  NAMES_ON_TOP,
  PLAIN_CHART,
  PLAIN_LINE,
  UprightAxis,
  WITH_NAMES_ABOVE,
} from './plain-axes.tsx';
import { distinctCurves, type NamedCurve } from './preload-names.ts';
import { SHARES } from './shares.ts';
import { slopeLabel } from './slope-label.ts';

export interface PreloadOverTimeProps {
  readonly curves: readonly PreloadCurve[];
  readonly loads: Joint['loads'];
  readonly width: number;
}

const HEIGHT = 260;
/** The text of the last decade reaches half its width beyond the axis. */
const MARGIN = { ...WITH_NAMES_ABOVE, right: 26 };
/** Below this width every other decade has its text, px. */
const NARROW = 420;
/** Decades of hours on the axis, as powers of ten. */
const DECADES = [-1, 0, 1, 2, 3, 4, 5];
const X_DOMAIN: [number, number] = [-1, 5];
const Y_DOMAIN: [number, number] = [0, 1];

const decadeText = (power: number): string => decimalText(10 ** power, power < 0 ? -power : 0);

/** Clamp force left over time on a logarithmic scale, at room and at service temperature. */
export function PreloadOverTime({ curves, loads, width }: PreloadOverTimeProps) {
  const named = distinctCurves(curves);
  const end = Math.log10(loads.duration);
  return (
    <div style={{ width }}>
      <p className={styles['title']}>Clamp force left over time</p>
      <ComposedChart width={width} height={HEIGHT} {...PLAIN_CHART} margin={MARGIN}>
        <LevelAxis
          of="decade"
          ticks={DECADES}
          texts={DECADES.map((power, index) => (width < NARROW && index % 2 === 1 ? '' : decadeText(power)))}
        />
        <UprightAxis ticks={SHARES} texts={SHARES.map(percentText)} />
        {RETIGHTENING_HOURS.slice(0, loads.retightenings).map((hours) => (
          <ReferenceLine key={hours} x={Math.log10(hours)} stroke="var(--hair)" strokeDasharray="2 3" />
        ))}
        {loads.duration > 0 && end >= X_DOMAIN[0] && end <= X_DOMAIN[1] && (
          <ReferenceLine
            x={end}
            stroke="var(--ink)"
            label={{ value: durationText(loads.duration), position: 'top', fill: 'var(--ink)', fontSize: 14 }}
          />
        )}
        {named.map(
          ({ name, points, isLittleKnown }) =>
            isLittleKnown && (
              <Area
                key={name}
                data={[...points]}
                dataKey="band"
                isAnimationActive={false}
                stroke="none"
                fill="var(--band2)"
                fillOpacity={0.7}
                activeDot={false}
              />
            ),
        )}
        {named.map(
          ({ name, points, isWarm, isLittleKnown }) =>
            isLittleKnown && (
              <Line
                key={name}
                data={[...points]}
                dataKey="best"
                {...PLAIN_LINE}
                stroke="var(--ink2)"
                strokeWidth={isWarm ? 1.2 : 0.6}
              />
            ),
        )}
        {named.map(({ name, points, isWarm }) => (
          <Line
            key={name}
            data={[...points]}
            dataKey="left"
            {...PLAIN_LINE}
            stroke="var(--ink)"
            strokeWidth={isWarm ? 2.2 : 1.2}
          />
        ))}
        <ZIndexLayer zIndex={NAMES_ON_TOP}>
          <Names named={named} />
        </ZIndexLayer>
      </ComposedChart>
      <p className={styles['axis']}>
        {loads.retightenings > 0 ? 'dashed: tightened again; ' : ''}
        {named.some(({ isLittleKnown }) => isLittleKnown)
          ? 'band: creep is little known, its lower line counts; '
          : ''}
        time under load, h
      </p>
    </div>
  );
}

function Names({ named }: { readonly named: readonly NamedCurve[] }) {
  const area = usePlotArea();
  if (area === undefined) return null;
  return named.map(({ name, points, isWarm }) => {
    const line = points.map(({ decade, left }) => ({ x: decade, y: left }));
    const place = slopeLabel(name, line, { area, xDomain: X_DOMAIN, yDomain: Y_DOMAIN, below: isWarm });
    return (
      place && (
        <text
          key={name}
          x={place.x}
          y={place.y}
          transform={`rotate(${place.angle} ${place.x} ${place.y})`}
          textAnchor="end"
          fontSize={13}
          fill="var(--ink)"
          stroke="var(--paper)"
          strokeWidth={4}
          paintOrder="stroke"
        >
          {name}
        </text>
      )
    );
  });
}
