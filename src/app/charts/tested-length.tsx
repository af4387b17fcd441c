import { memo, useMemo } from 'react';
import { type CouponPoint, couponPoints } from '../../core/bench/coupon-points.ts';
import type { SetupEvidence } from '../../core/bench/evidence.ts';
import { admit } from '../../core/joint/stop.ts';
import { decimalText, forceText, lengthNumber, lengthText } from '../../wording/amount.ts';
import styles from './charts.module.css';
import { LateFigure } from './late-figure.tsx';
import { type LengthChartsProps, lengthTicks, panelsFor } from './length-charts.tsx';
import { LengthPanel, type Tested } from './length-panel.tsx';
import { isOfPanel } from './length-series.ts';
import { niceTicks } from './nice-ticks.ts';

export interface TestedLengthProps extends LengthChartsProps {
  /** The joint's own set-up. */
  readonly setup: SetupEvidence;
}

const GAP = 28;
const LEAST_PANEL = 250;
const FORCE_STEPS = 5;

/** Pull-out over length, a panel a diameter: what each coupon stands for, over the band that is predicted. */
export default function TestedLength({
  joint,
  drawer,
  recommendation,
  chosenInsertId,
  setup,
}: TestedLengthProps) {
  const content = useMemo(
    () => ({ joint, drawer, recommendation, chosenInsertId, setup }),
    [joint, drawer, recommendation, chosenInsertId, setup],
  );
  return <LateFigure content={content} drawing={TestedDrawing} />;
}

const testedOf = ({ testId, says, length, force }: CouponPoint): Tested => ({
  testId,
  says,
  length,
  force: force.value,
});

const TestedDrawing = memo(function TestedDrawing({
  joint,
  drawer,
  recommendation,
  chosenInsertId,
  setup,
  width,
}: TestedLengthProps & { readonly width: number }) {
  const points = useMemo(() => {
    const admission = admit(joint);
    return admission.kind === 'stopped' ? [] : couponPoints(setup, admission.joint);
  }, [joint, setup]);
  const panels = useMemo(
    () =>
      panelsFor({ joint, drawer, recommendation, chosenInsertId })
        .map((panel) => ({ panel, tested: points.filter((point) => isOfPanel(panel, point.knurlDiameter)) }))
        .filter(({ tested }) => tested.length > 0),
    [joint, drawer, recommendation, chosenInsertId, points],
  );
  if (panels.length === 0) return null;
  const columns = Math.max(1, Math.min(panels.length, Math.floor((width + GAP) / (LEAST_PANEL + GAP))));
  const panelWidth = Math.min(Math.floor((width - GAP * (columns - 1)) / columns), MOST_WIDTH);
  const curves = panels.flatMap(({ panel }) => panel.points);
  const lengths = lengthTicks(curves.map(({ length }) => length));
  const most = Math.max(...curves.map(({ upper }) => upper), ...points.map(({ force }) => force.value));
  const forces = niceTicks(most, FORCE_STEPS);
  return (
    <>
      <figcaption className={styles['caption']}>
        <h3>Coupons over what is predicted: pull-out over length</h3>
        <span className="line">full: the bond gave way; open: it held at least this</span>
      </figcaption>
      {/* Inert: the chart library listens for the focus on its layers, which makes each of them a stop of Tab. */}
      <div aria-hidden="true" inert className={styles['panels']} style={{ gap: GAP }}>
        {panels.map(({ panel, tested }) => (
          <div key={panel.knurlDiameter} style={{ width: panelWidth }}>
            <p className={styles['title']}>knurl ⌀ {decimalText(panel.knurlDiameter, 1)} mm</p>
            <LengthPanel
              panel={{ ...panel, own: [] }}
              others={[]}
              chosenInsertId={chosenInsertId}
              width={panelWidth}
              lengths={lengths}
              forces={forces}
              tested={tested.map(testedOf)}
            />
            <p className={styles['axis']}>pull-out in this joint, N, over insert length, mm</p>
          </div>
        ))}
      </div>
      <PointTable points={points} />
    </>
  );
});

const MOST_WIDTH = 560;

/** The same points as a table. */
function PointTable({ points }: { readonly points: readonly CouponPoint[] }) {
  return (
    <details className={styles['details']}>
      <summary className="go">The coupons as a table</summary>
      <table className={styles['table']}>
        <caption>
          What each coupon stands for in this joint: at its temperature, bore and layers; torques taken to a
          force
        </caption>
        <thead>
          <tr>
            <th scope="col">Test</th>
            <th scope="col">Knurl ⌀</th>
            <th scope="col">Length</th>
            <th scope="col">Pull-out</th>
          </tr>
        </thead>
        <tbody>
          {points.map(({ testId, knurlDiameter, length, says, force }) => (
            <tr key={testId}>
              <th scope="row">{testId.replace('-', ' ')}</th>
              <td>{lengthText(knurlDiameter)}</td>
              <td>{lengthNumber(length)} mm</td>
              <td>
                {says === 'held' ? 'at least ' : ''}
                {forceText(force.value)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
