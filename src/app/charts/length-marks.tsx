import { usePlotArea } from 'recharts';
import { forceText } from '../../wording/amount.ts';
import type { OwnPoint } from './length-series.ts';

/** A result of a coupon on the chart of its diameter. */
export interface Tested {
  readonly testId: string;
  readonly says: 'broke' | 'held';
  /** mm */
  readonly length: number;
  /** N or N·mm */
  readonly load: number;
}

interface MarksProps {
  readonly own: readonly OwnPoint[];
  readonly tested: readonly Tested[];
  readonly chosenInsertId: string;
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
}

/** Inserts of the drawer, the chosen one full and with its force; coupons: full where the bond gave way, open where it held. */
export function LengthMarks({ own, tested, chosenInsertId, xDomain, yDomain }: MarksProps) {
  const area = usePlotArea();
  if (area === undefined) return null;
  const across = (length: number) =>
    area.x + (area.width * (length - xDomain[0])) / (xDomain[1] - xDomain[0]);
  const up = (load: number) => area.y + area.height * (1 - (load - yDomain[0]) / (yDomain[1] - yDomain[0]));
  return (
    <>
      {own.map(({ insertId, length, median }) => {
        const [cx, cy] = [across(length), up(median)];
        return insertId === chosenInsertId ? (
          <g key={insertId}>
            <circle cx={cx} cy={cy} r={5} fill="var(--ink)" stroke="var(--ink)" strokeWidth={1.6} />
            <text x={cx - 15} y={cy + 5} textAnchor="end" fontSize={15} fill="var(--ink)">
              {forceText(median)}
            </text>
          </g>
        ) : (
          <circle
            key={insertId}
            cx={cx}
            cy={cy}
            r={4}
            fill="var(--paper)"
            stroke="var(--ink)"
            strokeWidth={1.6}
          />
        );
      })}
      {tested.map(({ testId, says, length, load }) => (
        <circle
          key={testId}
          cx={across(length)}
          cy={up(load)}
          r={4.5}
          fill={says === 'broke' ? 'var(--ink)' : 'var(--paper)'}
          stroke={says === 'broke' ? 'var(--paper)' : 'var(--ink)'}
          strokeWidth={says === 'broke' ? 1 : 1.6}
        />
      ))}
    </>
  );
}
