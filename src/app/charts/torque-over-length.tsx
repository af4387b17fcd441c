import { ComposedChart, Line, usePlotArea, ZIndexLayer } from 'recharts';
import styles from './charts.module.css';
import type { Panel } from './length-series.ts';
import { niceTicks, tickTexts } from './nice-ticks.ts';
import { endsOf, LevelAxis, NAMES_ON_TOP, PLAIN_CHART, PLAIN_LINE, UprightAxis } from './plain-axes.tsx';
import { slopeLabel } from './slope-label.ts';

export interface TorqueOverLengthProps {
  readonly panel: Panel;
  readonly width: number;
  readonly lengths: readonly number[];
}

const HEIGHT = 220;
const WIDEST = 640;
const TORQUE_STEPS = 4;
const JACK_OUT = 'pulls the insert out, if the part stands on plastic';
const DIAL = 'dial of this joint';

/** Torque over length: where the screw would pull the insert out of the plastic, and what to dial. */
export function TorqueOverLength({ panel, width, lengths }: TorqueOverLengthProps) {
  const torques = niceTicks(
    Math.max(...panel.points.flatMap(({ jackOutTorque, dial }) => [jackOutTorque, dial ?? 0])),
    TORQUE_STEPS,
  );
  return (
    <div aria-hidden="true" inert className={styles['torque']}>
      <h3>Torque over length, at this diameter</h3>
      <ComposedChart width={Math.min(width, WIDEST)} height={HEIGHT} data={panel.points} {...PLAIN_CHART}>
        <LevelAxis of="length" ticks={lengths} />
        <UprightAxis ticks={torques} texts={tickTexts(torques, 'N·m')} />
        <Line dataKey="jackOutTorque" {...PLAIN_LINE} stroke="var(--ink)" strokeDasharray="6 3" />
        <Line dataKey="dial" type="step" {...PLAIN_LINE} stroke="var(--ink)" strokeWidth={2.2} />
        <ZIndexLayer zIndex={NAMES_ON_TOP}>
          <TorqueNames panel={panel} xDomain={endsOf(lengths)} yDomain={endsOf(torques)} />
        </ZIndexLayer>
      </ComposedChart>
      <p className={styles['axis']}>torque, N·m, over insert length, mm</p>
    </div>
  );
}

interface TorqueNamesProps {
  readonly panel: Panel;
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
}

function TorqueNames({ panel, xDomain, yDomain }: TorqueNamesProps) {
  const area = usePlotArea();
  if (area === undefined) return null;
  const jackOut = panel.points.map(({ length, jackOutTorque }) => ({ x: length, y: jackOutTorque }));
  const dial = panel.points.flatMap((point) =>
    point.dial === undefined ? [] : [{ x: point.length, y: point.dial }],
  );
  const last = dial.at(-1);
  const flat = last === undefined ? [] : [{ x: xDomain[0], y: last.y }, last];
  const dialAbove = (last?.y ?? 0) > (jackOut.at(-1)?.y ?? 0);
  const places = [
    { name: JACK_OUT, place: slopeLabel(JACK_OUT, jackOut, { area, xDomain, yDomain, below: dialAbove }) },
    { name: DIAL, place: slopeLabel(DIAL, flat, { area, xDomain, yDomain, below: !dialAbove }) },
  ];
  return places.map(
    ({ name, place }) =>
      place && (
        <text
          key={name}
          x={place.x}
          y={place.y}
          transform={`rotate(${place.angle} ${place.x} ${place.y})`}
          textAnchor="end"
          fontSize={13}
          fill="var(--ink)"
        >
          {name}
        </text>
      ),
  );
}
