import { Area, ComposedChart, Line, ReferenceDot, ReferenceLine, usePlotArea, ZIndexLayer } from 'recharts';
import type { PrintedMaterial } from '../../core/host/material.ts';
import { greatestServiceTemperature, strengthLeft } from '../../core/host/temperature.ts';
import type { StrengthPoint } from '../../core/service/curves.ts';
import { decimalText, percentText, temperatureText } from '../../wording/amount.ts';
import styles from './charts.module.css';
import {
  endsOf,
  LevelAxis,
  NAMES_ON_TOP,
  PLAIN_CHART,
  PLAIN_LINE,
  UprightAxis,
  WITH_NAMES_ABOVE,
} from './plain-axes.tsx';
import { SHARES } from './shares.ts';
import { temperatureTicks } from './temperature-ticks.ts';

export interface StrengthOverTemperatureProps {
  readonly curve: readonly StrengthPoint[];
  readonly material: PrintedMaterial;
  readonly serviceTemperature: number;
  readonly width: number;
}

const HEIGHT = 260;

/** Strength left over temperature, with the service temperature and where the program stops. */
export function StrengthOverTemperature({
  curve,
  material,
  serviceTemperature,
  width,
}: StrengthOverTemperatureProps) {
  const stop = greatestServiceTemperature(material);
  const ticks = temperatureTicks(serviceTemperature, stop);
  const domain = endsOf(ticks);
  const left = strengthLeft(material, serviceTemperature).value;
  const isLittleKnown = curve.some(({ careful, best }) => best > careful);
  const isNearStop = stop - serviceTemperature < (domain[1] - domain[0]) / 4;
  return (
    <div style={{ width }}>
      <p className={styles['title']}>Strength of {material.name} left over temperature</p>
      <ComposedChart width={width} height={HEIGHT} {...PLAIN_CHART} margin={WITH_NAMES_ABOVE}>
        <LevelAxis of="temperature" ticks={ticks} texts={ticks.map((tick) => decimalText(tick, 0))} />
        <UprightAxis ticks={SHARES} texts={SHARES.map(percentText)} />
        <ReferenceLine x={stop} stroke="var(--stop)" strokeWidth={1.6} />
        <ZIndexLayer zIndex={NAMES_ON_TOP}>
          <StopName stop={stop} domain={domain} width={width} />
        </ZIndexLayer>
        {isLittleKnown && (
          <Area
            data={curve.map(({ temperature, careful, best }) => ({ temperature, band: [careful, best] }))}
            dataKey="band"
            isAnimationActive={false}
            stroke="none"
            fill="var(--band2)"
            fillOpacity={1}
            activeDot={false}
          />
        )}
        <Line data={[...curve]} dataKey="careful" {...PLAIN_LINE} stroke="var(--ink)" strokeWidth={2.2} />
        <ReferenceDot
          x={serviceTemperature}
          y={left}
          r={5}
          fill="var(--ink)"
          stroke="var(--ink)"
          label={{
            value: `service ${temperatureText(serviceTemperature)}: ${percentText(left)}`,
            position: isNearStop ? 'left' : 'right',
            offset: 10,
            fill: 'var(--ink)',
            fontSize: 15,
          }}
        />
      </ComposedChart>
      <p className={styles['axis']}>
        {isLittleKnown ? 'band: little is known, its lower line counts; ' : ''}temperature, °C
      </p>
    </div>
  );
}

interface StopNameProps {
  readonly stop: number;
  readonly domain: readonly [number, number];
  readonly width: number;
}

/** Half of what the name takes, px. */
const HALF_NAME = 62;

/** The name of the stop over its line, as far to the right as there is room. */
function StopName({ stop, domain, width }: StopNameProps) {
  const area = usePlotArea();
  if (area === undefined) return null;
  const x = area.x + (area.width * (stop - domain[0])) / (domain[1] - domain[0]);
  return (
    <text x={Math.min(x + HALF_NAME, width)} y={area.y - 8} textAnchor="end" fontSize={14} fill="var(--stop)">
      stop above {temperatureText(stop)}
    </text>
  );
}
