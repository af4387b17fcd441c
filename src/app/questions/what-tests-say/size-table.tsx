import { Fragment } from 'react';
import { loadAtInsert } from '../../../core/bench/bench-test.ts';
import { type StrengthFit, strengthBand } from '../../../core/bench/strength-fit.ts';
import type { StrengthPoint } from '../../../core/bench/strength-points.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { amountText, lengthText } from '../../../wording/amount.ts';
import { Twin } from '../../charts/twin.tsx';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import styles from './what-tests-say.module.css';

interface SizeTableProps {
  readonly found: Extract<StrengthFit, { readonly kind: 'fitted' }>;
  readonly points: readonly StrengthPoint[];
  readonly slot: string;
}

const COLUMNS = 5;

/** The picture of a regression as a table: each size that was tested, its loads, and what the fit says there. */
export function SizeTable({ found, points, slot }: SizeTableProps) {
  const sizes = new Map<string, StrengthPoint[]>();
  for (const point of points) {
    const key = `${lengthText(point.diameter)} × ${lengthText(point.length)}`;
    sizes.set(key, [...(sizes.get(key) ?? []), point]);
  }
  const inOrder = [...sizes].toSorted(
    ([, [one]], [, [other]]) =>
      (one?.diameter ?? 0) - (other?.diameter ?? 0) || (one?.length ?? 0) - (other?.length ?? 0),
  );
  return (
    <Twin summary="The picture as a table">
      <table className={styles['table']}>
        <caption>Sizes that were tested, and what the regression says there</caption>
        <thead>
          <tr>
            <th scope="col">Knurl ⌀ × knurled length</th>
            <th scope="col">measured</th>
            <th scope="col">regression</th>
            <th scope="col">mean, 95 %</th>
            <th scope="col">next coupon, 95 %</th>
          </tr>
        </thead>
        <tbody>
          {inOrder.map(([name, coupons]) => (
            <SizeRow key={name} name={name} coupons={coupons} found={found} slot={`${slot} ${name}`} />
          ))}
        </tbody>
      </table>
    </Twin>
  );
}

interface SizeRowProps {
  readonly name: string;
  readonly coupons: readonly StrengthPoint[];
  readonly found: SizeTableProps['found'];
  readonly slot: string;
}

function SizeRow({ name, coupons, found, slot }: SizeRowProps) {
  const [first] = coupons;
  if (first === undefined) return null;
  const { expected, mean, next } = strengthBand(found, first);
  const unit = found.units.response;
  const shown = (of: Derived, what: string) => {
    const text = amountText(of.value, unit);
    return <ComputedValue derived={of} text={text} label={`${name}, ${what}, ${text}`} />;
  };
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{name}</th>
        <td data-name="measured" className={styles['wraps']}>
          {coupons.map(({ test }, place) => (
            <Fragment key={test.id}>
              {place === 0 ? '' : ', '}
              {shown(loadAtInsert(test), `${test.id.replace('-', ' ')}, measured`)}
            </Fragment>
          ))}
        </td>
        <td data-name="regression">{shown(expected, 'regression')}</td>
        <td data-name="mean, 95 %">
          {shown(mean.low, 'lower end of the mean')} to {shown(mean.high, 'upper end of the mean')}
        </td>
        <td data-name="next coupon, 95 %">
          {shown(next.low, 'lower end of the next')} to {shown(next.high, 'upper end of the next')}
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}
