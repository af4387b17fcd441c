import { memo, useMemo } from 'react';
import type { Insert } from '../../core/inserts/insert.ts';
import type { Joint } from '../../core/joint/joint.ts';
import { admit } from '../../core/joint/stop.ts';
import { lengthCurve } from '../../core/recommend/length-curve.ts';
import type { Recommendation } from '../../core/recommend/recommendation.ts';
import { decimalText } from '../../wording/amount.ts';
import { STANDINGS } from '../../wording/standing.ts';
import styles from './charts.module.css';
import { LateFigure } from './late-figure.tsx';
import { LengthPanel } from './length-panel.tsx';
import { lengthPanels } from './length-series.ts';
import { LengthTable } from './length-table.tsx';
import { niceTicks } from './nice-ticks.ts';
import { TorqueOverLength } from './torque-over-length.tsx';

export interface LengthChartsProps {
  readonly joint: Joint;
  readonly drawer: readonly Insert[];
  readonly recommendation: Extract<Recommendation, { readonly kind: 'answered' }>;
  readonly chosenInsertId: string;
}

const GAP = 28;
const LEAST_PANEL = 250;
const FORCE_STEPS = 5;

/** What length buys: pull-out over length, a panel a diameter; then jack-out and dial over length. */
export default function LengthCharts({ joint, drawer, recommendation, chosenInsertId }: LengthChartsProps) {
  const content = useMemo(
    () => ({ joint, drawer, recommendation, chosenInsertId }),
    [joint, drawer, recommendation, chosenInsertId],
  );
  return <LateFigure content={content} drawing={LengthDrawing} />;
}

export function panelsFor({ joint, ...others }: LengthChartsProps) {
  const admission = admit(joint);
  return admission.kind === 'stopped'
    ? []
    : lengthPanels({ joint, ...others }, (insert, lengths) => lengthCurve(admission.joint, insert, lengths));
}

const LengthDrawing = memo(function LengthDrawing({
  joint,
  drawer,
  recommendation,
  chosenInsertId,
  width,
}: LengthChartsProps & { readonly width: number }) {
  const panels = useMemo(
    () => panelsFor({ joint, drawer, recommendation, chosenInsertId }),
    [joint, drawer, recommendation, chosenInsertId],
  );
  const [first] = panels;
  if (first === undefined) return null;
  const columns = Math.max(1, Math.min(panels.length, Math.floor((width + GAP) / (LEAST_PANEL + GAP))));
  const panelWidth = Math.floor((width - GAP * (columns - 1)) / columns);
  const lengths = lengthTicks(panels.flatMap(({ points }) => points.map(({ length }) => length)));
  const greatest = Math.max(...panels.flatMap(({ points }) => points.map(({ upper }) => upper)));
  const forces = niceTicks(greatest, FORCE_STEPS);
  const { sign, words } = STANDINGS.estimate;
  return (
    <>
      <figcaption className={styles['caption']}>
        <h3>Knurl pull-out over length, one diameter a panel</h3>
        <span className="line">
          <span className={styles['sign']}>{sign}</span> {words}; dashed: the other diameters
        </span>
      </figcaption>
      {/* Inert: the chart library listens for the focus on its layers, which makes each of them a stop of Tab. */}
      <div aria-hidden="true" inert className={styles['panels']} style={{ gap: GAP }}>
        {panels.map((panel) => (
          <div key={panel.knurlDiameter} style={{ width: panelWidth }}>
            <p className={styles['title']}>
              knurl ⌀ {decimalText(panel.knurlDiameter, 1)} mm{panel.isChosen ? ', yours' : ''}
            </p>
            <LengthPanel
              panel={panel}
              others={panels.filter((other) => other !== panel)}
              chosenInsertId={chosenInsertId}
              width={panelWidth}
              lengths={lengths}
              loads={forces}
              unit="N"
            />
            <p className={styles['axis']}>pull-out, N, over insert length, mm</p>
          </div>
        ))}
      </div>
      <TorqueOverLength panel={first} width={width} lengths={lengths} />
      <LengthTable joint={joint} panels={panels} />
    </>
  );
});

/** Whole millimetres from the shortest to the longest length drawn. */
export function lengthTicks(lengths: readonly number[]): readonly number[] {
  const from = Math.floor(Math.min(...lengths));
  const to = Math.ceil(Math.max(...lengths));
  const step = to - from > 8 ? 2 : 1;
  return Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, index) => from + index * step);
}
