import { memo, useMemo } from 'react';
import { couponPoints } from '../../core/bench/coupon-points.ts';
import type { SetupEvidence } from '../../core/bench/evidence.ts';
import { admit } from '../../core/joint/stop.ts';
import { decimalText } from '../../wording/amount.ts';
import styles from './charts.module.css';
import { LateFigure } from './late-figure.tsx';
import { type LengthChartsProps, lengthTicks, panelsFor } from './length-charts.tsx';
import { LengthPanel } from './length-panel.tsx';
import { isOfPanel } from './length-series.ts';
import { niceTicks } from './nice-ticks.ts';
import { TESTED_QUANTITIES, type TestedCoupon, type TestedQuantity } from './tested-quantities.ts';
import { TestedTable } from './tested-table.tsx';

export interface TestedLengthProps extends LengthChartsProps {
  /** The joint's own set-up. */
  readonly setup: SetupEvidence;
}

const GAP = 28;
const LEAST_PANEL = 250;
const MOST_WIDTH = 560;
const STEPS = 5;

/**
 * Pull-out over length, a panel a diameter: what each coupon stands for, over the band that is predicted. The same of
 * torques, where coupons were turned or jacked out.
 */
export default function TestedLength({
  joint,
  drawer,
  recommendation,
  chosenInsertId,
  setup,
}: TestedLengthProps) {
  const contents = useMemo(() => {
    const admission = admit(joint);
    const points = admission.kind === 'stopped' ? [] : couponPoints(setup, admission.joint);
    return (Object.keys(TESTED_QUANTITIES) as TestedQuantity[]).flatMap((quantity) => {
      const coupons = points.flatMap((point): readonly TestedCoupon[] => {
        const value = TESTED_QUANTITIES[quantity].of(point);
        return value === undefined ? [] : [{ ...point, value }];
      });
      return coupons.length === 0
        ? []
        : [{ quantity, coupons, joint, drawer, recommendation, chosenInsertId }];
    });
  }, [joint, drawer, recommendation, chosenInsertId, setup]);
  return contents.map((content) => (
    <LateFigure key={content.quantity} content={content} drawing={TestedDrawing} />
  ));
}

interface TestedDrawingProps extends LengthChartsProps {
  readonly quantity: TestedQuantity;
  readonly coupons: readonly TestedCoupon[];
}

const TestedDrawing = memo(function TestedDrawing({
  quantity,
  coupons,
  joint,
  drawer,
  recommendation,
  chosenInsertId,
  width,
}: TestedDrawingProps & { readonly width: number }) {
  const { title, axis, unit, bandOf } = TESTED_QUANTITIES[quantity];
  const panels = useMemo(
    () =>
      panelsFor({ joint, drawer, recommendation, chosenInsertId })
        .map((panel) => ({
          panel: {
            ...panel,
            own: [],
            points: panel.points.map((point) => ({ length: point.length, ...bandOf(point) })),
          },
          tested: coupons.filter((coupon) => isOfPanel(panel, coupon.knurlDiameter.value)),
        }))
        .filter(({ tested }) => tested.length > 0),
    [joint, drawer, recommendation, chosenInsertId, coupons, bandOf],
  );
  if (panels.length === 0) return null;
  const columns = Math.max(1, Math.min(panels.length, Math.floor((width + GAP) / (LEAST_PANEL + GAP))));
  const panelWidth = Math.min(Math.floor((width - GAP * (columns - 1)) / columns), MOST_WIDTH);
  const curves = panels.flatMap(({ panel }) => panel.points);
  const lengths = lengthTicks(curves.map(({ length }) => length));
  const most = Math.max(...curves.map(({ upper }) => upper), ...coupons.map(({ value }) => value.value));
  return (
    <>
      <figcaption className={styles['caption']}>
        <h3>{title}</h3>
        <span className="line">full: the bond gave way; open: it held at least this</span>
      </figcaption>
      {/* Inert: the chart library listens for the focus on its layers, which makes each of them a stop of Tab. */}
      <div aria-hidden="true" inert className={styles['panels']} style={{ gap: GAP }}>
        {panels.map(({ panel, tested }) => (
          <div key={panel.knurlDiameter} style={{ width: panelWidth }}>
            <p className={styles['title']}>knurl ⌀ {decimalText(panel.knurlDiameter, 1)} mm</p>
            <LengthPanel
              panel={panel}
              others={[]}
              chosenInsertId={chosenInsertId}
              width={panelWidth}
              lengths={lengths}
              loads={niceTicks(most, STEPS)}
              unit={unit}
              tested={tested.map(({ testId, says, length, value }) => ({
                testId,
                says,
                length: length.value,
                load: value.value,
              }))}
            />
            <p className={styles['axis']}>{axis}</p>
          </div>
        ))}
      </div>
      <TestedTable quantity={quantity} coupons={coupons} />
    </>
  );
});
