import { type PlotPoint, type ProbabilityPlot, plottedAt } from '../../../core/evidence/probability-plot.ts';
import type { CoreUnit, Derived } from '../../../core/sources/derived.ts';
import { amountText, decimalText, percentText } from '../../../wording/amount.ts';
import { Twin } from '../../charts/twin.tsx';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import styles from './what-tests-say.module.css';

interface PlotTableProps {
  readonly plot: Extract<ProbabilityPlot, { readonly kind: 'plotted' }>;
  /** Those of the points, in any order. */
  readonly loads: readonly Derived[];
  readonly unit: CoreUnit;
  readonly slot: string;
}

/** Where each value stands among all like parts, for a probability plot. */
export const PlotTable = ({ plot: { points }, loads, unit, slot }: PlotTableProps) => (
  <Twin summary="Probability plot, as a table">
    <table className={styles['table']}>
      <caption>
        The straighter the values lie over the deviations, the better a scatter fits; few always look straight
      </caption>
      <thead>
        <tr>
          <th scope="col">Value</th>
          <th scope="col">share below</th>
          <th scope="col">deviations from the median</th>
        </tr>
      </thead>
      <tbody>
        {points.map((point, place) => (
          <PointRow
            key={point.position}
            load={loads.find(({ value }) => value === point.value)}
            point={point}
            at={plottedAt(place + 1, points.length)}
            unit={unit}
            slot={`${slot} plot ${place}`}
          />
        ))}
      </tbody>
    </table>
  </Twin>
);

interface PointRowProps {
  readonly load: Derived | undefined;
  readonly point: PlotPoint;
  readonly at: ReturnType<typeof plottedAt>;
  readonly unit: CoreUnit;
  readonly slot: string;
}

function PointRow({ load, point, at, unit, slot }: PointRowProps) {
  const name = amountText(point.value, unit);
  const shown = (of: Derived, what: string, text: string) => (
    <ComputedValue derived={of} text={text} label={`${name}, ${what}, ${text}`} />
  );
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{load === undefined ? name : shown(load, 'measured', name)}</th>
        <td data-name="share below">{shown(at.position, 'share below', percentText(at.position.value))}</td>
        <td data-name="deviations from the median">
          {shown(at.score, 'deviations from the median', decimalText(at.score.value, 2))}
        </td>
      </tr>
      <DerivationSlot name={slot} columns={3} />
    </DerivationRow>
  );
}
