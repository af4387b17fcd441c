import { usePlotArea } from 'recharts';

/** One way over another. */
export interface RatioRow {
  readonly name: string;
  /** What it takes to see differences, each in a few words. */
  readonly needs: readonly string[];
  /** Absent where nothing is compared; then what stands in its place. */
  readonly ratio?: { readonly value: number; readonly low: number; readonly high: number };
  readonly instead?: string;
}

/** Places within a row, px from its top: name, interval, and what stands below it where there is no room beside. */
const AT = { name: 17, interval: 36, below: 66 } as const;
const BESIDE = 24;
const ARROW = 7;

interface RowsProps {
  readonly rows: readonly RatioRow[];
  readonly domain: readonly [number, number];
  readonly isBeside: boolean;
}

/** Names, ratios with their intervals, and what a difference takes; an interval that leaves the axis ends in an arrowhead. */
export function RatioRows({ rows, domain, isBeside }: RowsProps) {
  const area = usePlotArea();
  if (area === undefined) return null;
  const height = area.height / rows.length;
  const across = area.width / Math.log(domain[1] / domain[0]);
  const xOf = (ratio: number) =>
    area.x + across * Math.log(Math.min(domain[1], Math.max(domain[0], ratio)) / domain[0]);
  const beside = area.x + area.width + BESIDE;
  return rows.map(({ name, needs, ratio, instead = '' }, place) => {
    const top = area.y + place * height;
    const needed = isBeside ? needs : [needs.join(', ')];
    return (
      <g key={name}>
        <Text x={area.x} y={top + AT.name} ink="var(--ink)" size={15}>
          {name}
        </Text>
        {needed.map((text, line) => (
          <Text
            key={text}
            x={isBeside ? beside : area.x}
            y={top + (isBeside ? AT.name + line * (AT.interval + 5 - AT.name) : AT.below)}
            ink="var(--ink2)"
            size={13}
          >
            {text}
          </Text>
        ))}
        {ratio === undefined ? (
          <Text x={area.x} y={top + AT.interval + 5} ink="var(--ink2)" size={14}>
            {instead}
          </Text>
        ) : (
          <Interval
            y={top + AT.interval}
            low={xOf(ratio.low)}
            at={xOf(ratio.value)}
            high={xOf(ratio.high)}
            isCut={{ low: ratio.low < domain[0], high: ratio.high > domain[1] }}
          />
        )}
      </g>
    );
  });
}

interface IntervalProps {
  readonly y: number;
  readonly low: number;
  readonly at: number;
  readonly high: number;
  readonly isCut: { readonly low: boolean; readonly high: boolean };
}

const Interval = ({ y, low, at, high, isCut }: IntervalProps) => (
  <>
    <path d={`M${low} ${y}H${high}`} stroke="var(--ink)" strokeWidth={2} fill="none" />
    <End x={low} y={y} isCut={isCut.low} way={-1} />
    <End x={high} y={y} isCut={isCut.high} way={1} />
    <circle cx={at} cy={y} r={5.5} fill="var(--ink)" stroke="var(--paper)" strokeWidth={1.5} />
  </>
);

/** The end of an interval: a tick, or an arrowhead where it goes on beyond the axis. */
const End = ({
  x,
  y,
  isCut,
  way,
}: {
  readonly x: number;
  readonly y: number;
  readonly isCut: boolean;
  readonly way: 1 | -1;
}) => (
  <path
    d={
      isCut ? `M${x - way * ARROW} ${y - 5}L${x} ${y}L${x - way * ARROW} ${y + 5}` : `M${x} ${y - 5}V${y + 5}`
    }
    stroke="var(--ink)"
    strokeWidth={isCut ? 2 : 1.4}
    fill="none"
  />
);

interface TextProps {
  readonly x: number;
  readonly y: number;
  readonly ink: string;
  readonly size: number;
  readonly children: string;
}

/** Text with a halo of paper: the line at 1 passes behind it. */
const Text = ({ x, y, ink, size, children }: TextProps) => (
  <text x={x} y={y} fill={ink} fontSize={size} stroke="var(--paper)" strokeWidth={4} paintOrder="stroke">
    {children}
  </text>
);
