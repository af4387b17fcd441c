import { memo, useMemo } from 'react';
import type { Insert } from '../../core/inserts/insert.ts';
import type { AnswerableJoint } from '../../core/joint/stop.ts';
import { preloadCurves, strengthCurve } from '../../core/service/curves.ts';
import { STANDINGS } from '../../wording/standing.ts';
import styles from './charts.module.css';
import { HoldTables } from './hold-tables.tsx';
import { LateFigure } from './late-figure.tsx';
import { PreloadOverTime } from './preload-over-time.tsx';
import { StrengthOverTemperature } from './strength-over-temperature.tsx';

export interface HoldChartsProps {
  readonly joint: AnswerableJoint;
  readonly insert: Insert;
}

const GAP = 40;
const LEAST_CHART = 380;

/** What time and heat do: preload over time, strength over temperature. */
export default function HoldCharts({ joint, insert }: HoldChartsProps) {
  const content = useMemo(() => ({ joint, insert }), [joint, insert]);
  return <LateFigure content={content} drawing={HoldDrawing} />;
}

const HoldDrawing = memo(function HoldDrawing({
  joint,
  insert,
  width,
}: HoldChartsProps & { readonly width: number }) {
  const curves = useMemo(() => preloadCurves(joint, insert), [joint, insert]);
  const { material } = joint.host;
  const strength = useMemo(() => strengthCurve(material), [material]);
  const isSideBySide = width >= 2 * LEAST_CHART + GAP;
  const each = isSideBySide ? Math.floor((width - GAP) / 2) : width;
  const { sign, words } = STANDINGS.estimate;
  return (
    <>
      <figcaption className={styles['caption']}>
        <h3>What time and heat leave</h3>
        <span className="line">
          <span className={styles['sign']}>{sign}</span> {words}; beyond 1,000 hours and above 23 °C
          extrapolated
        </span>
      </figcaption>
      {/* Inert: the chart library listens for the focus on its layers, which makes each of them a stop of Tab. */}
      <div aria-hidden="true" inert className={styles['panels']} style={{ gap: GAP }}>
        <PreloadOverTime curves={curves} loads={joint.loads} width={each} />
        <StrengthOverTemperature
          curve={strength}
          material={material}
          serviceTemperature={joint.loads.serviceTemperature}
          width={each}
        />
      </div>
      <HoldTables joint={joint} insert={insert} curves={curves} strength={strength} />
    </>
  );
});
