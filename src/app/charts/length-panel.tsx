import { Area, ComposedChart, Line, ReferenceDot, usePlotArea, XAxis, YAxis, ZIndexLayer } from 'recharts';
import { forceNumber, forceText } from '../../wording/amount.ts';
import type { BandPoint, Panel } from './length-series.ts';
import { tickTexts } from './nice-ticks.ts';
import { slopeLabel } from './slope-label.ts';

export interface LengthPanelProps {
  readonly panel: Panel<BandPoint>;
  readonly others: readonly Panel[];
  readonly chosenInsertId: string;
  readonly width: number;
  readonly lengths: readonly number[];
  /** Ticks of the upright axis, N or N·mm. */
  readonly loads: readonly number[];
  readonly unit: 'N' | 'N·mm';
  /** What coupons say of this diameter: a full dot where the bond gave way, an open one where it held at least that. */
  readonly tested?: readonly Tested[];
}

export interface Tested {
  readonly testId: string;
  readonly says: 'broke' | 'held';
  /** mm */
  readonly length: number;
  /** N or N·mm */
  readonly load: number;
}

const NOTHING_TESTED: readonly Tested[] = [];
const HEIGHT = 236;
export const AXIS = { stroke: 'var(--hair)', tick: { fill: 'var(--ink2)', fontSize: 13 } } as const;
/** Above areas, lines and axes of the chart. */
export const NAMES_ON_TOP = 1500;
const MARGIN = { top: 12, right: 12, bottom: 0, left: 0 };

/** Pull-out or torque over length for one knurl diameter: band from 1 in 20 less to 1 in 20 more, median within. */
export function LengthPanel(props: LengthPanelProps) {
  const { panel, others, chosenInsertId, width, lengths, loads, unit, tested = NOTHING_TESTED } = props;
  const rows = panel.points.map((point) => ({ ...point, band: [point.characteristic, point.upper] }));
  const xDomain: [number, number] = [lengths[0] ?? 0, lengths.at(-1) ?? 1];
  const yDomain: [number, number] = [0, loads.at(-1) ?? 1];
  const texts = unit === 'N' ? loads.map(forceNumber) : tickTexts(loads, 'N·m');
  return (
    <ComposedChart
      width={width}
      height={HEIGHT}
      data={rows}
      margin={MARGIN}
      accessibilityLayer={false}
      style={{ fontFamily: 'var(--narrow)' }}
    >
      <XAxis dataKey="length" type="number" domain={xDomain} ticks={[...lengths]} {...AXIS} />
      <YAxis
        type="number"
        domain={yDomain}
        ticks={[...loads]}
        tickFormatter={(load: number) => texts[loads.indexOf(load)] ?? ''}
        width={52}
        {...AXIS}
      />
      <Area
        dataKey="band"
        isAnimationActive={false}
        stroke="none"
        fill={panel.isChosen ? 'var(--brass)' : 'var(--band2)'}
        fillOpacity={panel.isChosen ? 0.42 : 1}
        activeDot={false}
      />
      {others.map((other) => (
        <Line
          key={other.knurlDiameter}
          data={[...other.points]}
          dataKey="median"
          isAnimationActive={false}
          dot={false}
          activeDot={false}
          stroke="var(--hair)"
          strokeWidth={0.9}
          strokeDasharray="2 3"
        />
      ))}
      <Line
        dataKey="characteristic"
        isAnimationActive={false}
        dot={false}
        activeDot={false}
        stroke="var(--ink)"
      />
      <Line
        dataKey="median"
        isAnimationActive={false}
        dot={false}
        activeDot={false}
        stroke="var(--ink)"
        strokeWidth={panel.isChosen ? 2.2 : 1.4}
      />
      <ZIndexLayer zIndex={NAMES_ON_TOP}>
        <LineNames panel={panel} xDomain={xDomain} yDomain={yDomain} />
      </ZIndexLayer>
      {panel.own.map((own) => (
        <ReferenceDot
          key={own.insertId}
          x={own.length}
          y={own.median}
          r={own.insertId === chosenInsertId ? 5 : 4}
          fill={own.insertId === chosenInsertId ? 'var(--ink)' : 'var(--paper)'}
          stroke="var(--ink)"
          strokeWidth={1.6}
          {...(own.insertId === chosenInsertId
            ? {
                label: {
                  value: forceText(own.median),
                  position: 'left',
                  offset: 10,
                  fill: 'var(--ink)',
                  fontSize: 15,
                },
              }
            : {})}
        />
      ))}
      {tested.map(({ testId, says, length, load }) => (
        <ReferenceDot
          key={testId}
          x={length}
          y={load}
          r={4.5}
          fill={says === 'broke' ? 'var(--ink)' : 'var(--paper)'}
          stroke={says === 'broke' ? 'var(--paper)' : 'var(--ink)'}
          strokeWidth={says === 'broke' ? 1 : 1.6}
        />
      ))}
    </ComposedChart>
  );
}

interface LineNamesProps {
  readonly panel: Panel<BandPoint>;
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
}

/** The names of the three lines, lying along them. */
function LineNames({ panel, xDomain, yDomain }: LineNamesProps) {
  const area = usePlotArea();
  if (area === undefined) return null;
  const lines = [
    { name: '1 in 20 holds more', key: 'upper', from: 'end', below: false },
    { name: 'median', key: 'median', from: 'end', below: false },
    { name: '1 in 20 holds less', key: 'characteristic', from: 'end', below: true },
  ] as const;
  return lines.map(({ name, key, below }) => {
    const values = panel.points.map((point) => ({ x: point.length, y: point[key] }));
    const place = slopeLabel(name, values, { area, xDomain, yDomain, below });
    return (
      place && (
        <text
          key={key}
          x={place.x}
          y={place.y}
          transform={`rotate(${place.angle} ${place.x} ${place.y})`}
          textAnchor="end"
          fontSize={13}
          fill={key === 'characteristic' || key === 'median' ? 'var(--ink)' : 'var(--ink2)'}
        >
          {name}
        </text>
      )
    );
  });
}
