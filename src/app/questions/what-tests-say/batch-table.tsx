import { type BatchComparison, compareBatches, RATIO_TO_SEE } from '../../../core/bench/sample-report.ts';
import type { TestSample } from '../../../core/bench/test-samples.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { decimalText } from '../../../wording/amount.ts';
import { sentenceOfNoComparison } from '../../../wording/sample-report.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import styles from './what-tests-say.module.css';

interface BatchTableProps {
  readonly batches: TestSample['batches'];
  readonly slot: string;
}

const COLUMNS = 5;

/** What was varied: each batch beside the first, as a ratio with its interval. */
export function BatchTable({ batches, slot }: BatchTableProps) {
  const compared = compareBatches(batches);
  if (compared.length === 0) return null;
  return (
    <table className={styles['table']}>
      <caption>What was varied: strength over that of “{compared[0]?.first}”</caption>
      <thead>
        <tr>
          <th scope="col">Batch</th>
          <th scope="col">ratio</th>
          <th scope="col">95 % interval</th>
          <th scope="col">chance by scatter alone</th>
          <th scope="col">coupons each to see {decimalText(RATIO_TO_SEE, 1)}</th>
        </tr>
      </thead>
      <tbody>
        {compared.map((one) => (
          <BatchRow key={one.name} of={one} slot={`${slot} ${one.name}`} />
        ))}
      </tbody>
    </table>
  );
}

function BatchRow({ of, slot }: { readonly of: BatchComparison; readonly slot: string }) {
  const { name, comparison, needed } = of;
  if (comparison.kind === 'refused') {
    return (
      <tr>
        <th scope="row">{name}</th>
        <td data-name="ratio" colSpan={COLUMNS - 1}>
          {sentenceOfNoComparison(comparison)}
        </td>
      </tr>
    );
  }
  const { estimate, chance } = comparison.ratio;
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{name}</th>
        <td data-name="ratio">
          <Figure of={estimate.value} what={`${name}, ratio`} />
        </td>
        <td data-name="95 % interval">
          <Figure of={estimate.low} what={`${name}, lower end of the ratio`} /> to{' '}
          <Figure of={estimate.high} what={`${name}, upper end of the ratio`} />
        </td>
        <td data-name="chance by scatter alone">
          <Figure of={chance} what={`${name}, chance by scatter alone`} />
        </td>
        <td data-name="coupons each">
          {needed === undefined || needed.kind === 'refused' ? (
            'more than 1,000'
          ) : (
            <Figure of={needed.each} what={`${name}, coupons of each`} decimals={0} />
          )}
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}

interface FigureProps {
  readonly of: Derived;
  readonly what: string;
  readonly decimals?: number;
}

function Figure({ of, what, decimals = 2 }: FigureProps) {
  const text = decimalText(of.value, decimals);
  return <ComputedValue derived={of} text={text} label={`${what}, ${text}`} />;
}
