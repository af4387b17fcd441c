import { Area, ComposedChart, Line, usePlotArea, ZIndexLayer } from 'recharts';
import { forceNumber } from '../../wording/amount.ts';
import { LengthMarks, type Tested } from './length-marks.tsx';
import type { BandPoint, Panel } from './length-series.ts';
import { tickTexts } from './nice-ticks.ts';
import { endsOf, LevelAxis, NAMES_ON_TOP, PLAIN_CHART, PLAIN_LINE, UprightAxis } from './plain-axes.tsx';
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

const NOTHING_TESTED: readonly Tested[] = [];
const HEIGHT = 236;

/** Pull-out or torque over length for one knurl diameter: band from 1 in 20 less to 1 in 20 more, median within. */
export function LengthPanel(props: LengthPanelProps) {
  const { panel, others, chosenInsertId, width, lengths, loads, unit, tested = NOTHING_TESTED } = props;
  const rows = panel.points.map((point) => ({ ...point, band: [point.characteristic, point.upper] }));
  const texts = unit === 'N' ? loads.map(forceNumber) : tickTexts(loads, 'N·m');
  const domains = { xDomain: endsOf(lengths), yDomain: endsOf(loads) };
  return (
    <ComposedChart width={width} height={HEIGHT} data={rows} {...PLAIN_CHART}>
      <LevelAxis of="length" ticks={lengths} />
      <UprightAxis ticks={loads} texts={texts} />
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
          {...PLAIN_LINE}
          stroke="var(--hair)"
          strokeWidth={0.9}
          strokeDasharray="2 3"
        />
      ))}
      <Line dataKey="characteristic" {...PLAIN_LINE} stroke="var(--ink)" />
      <Line dataKey="median" {...PLAIN_LINE} stroke="var(--ink)" strokeWidth={panel.isChosen ? 2.2 : 1.4} />
      <ZIndexLayer zIndex={NAMES_ON_TOP}>
        <LineNames panel={panel} {...domains} />
        <LengthMarks own={panel.own} tested={tested} chosenInsertId={chosenInsertId} {...domains} />
      </ZIndexLayer>
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
