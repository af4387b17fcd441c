import { usePlotArea } from 'recharts';
import type { HoleErrors } from './hole-errors.ts';
import { slopeLabel } from './slope-label.ts';

/** More points than these would hide one another behind their bars. */
const MOST_BARS = 60;
const RADIUS = 4;
/** Share of the scale where the name of the curve before the readings ends. */
const PRIOR_NAMED = 0.74;

interface InFrame {
  readonly found: HoleErrors;
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
}

/** Every hole, with the uncertainty of its reading; a hole far from the others is open and has its number. */
export function ErrorMarks({ found: { marks }, xDomain, yDomain }: InFrame) {
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
export function ErrorLineNames({
  found: { samples },
  isRead,
  xDomain,
  yDomain,
}: InFrame & { readonly isRead: boolean }) {
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
