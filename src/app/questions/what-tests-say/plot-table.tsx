import type { ProbabilityPlot } from '../../../core/evidence/probability-plot.ts';
import type { CoreUnit } from '../../../core/sources/derived.ts';
import { amountText, decimalText, percentText } from '../../../wording/amount.ts';
import styles from './what-tests-say.module.css';

interface PlotTableProps {
  readonly plot: Extract<ProbabilityPlot, { readonly kind: 'plotted' }>;
  readonly unit: CoreUnit;
}

/** Where each value stands among all like parts, for a probability plot. */
export const PlotTable = ({ plot, unit }: PlotTableProps) => (
  <details className={styles['more']}>
    <summary className="go">Probability plot, as a table</summary>
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
        {plot.points.map(({ value, position, score }) => (
          <tr key={position}>
            <th scope="row">{amountText(value, unit)}</th>
            <td data-name="share below">{percentText(position)}</td>
            <td data-name="deviations from the median">{decimalText(score, 2)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </details>
);
