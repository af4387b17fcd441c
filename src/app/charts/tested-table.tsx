import type { Derived } from '../../core/sources/derived.ts';
import { amountText } from '../../wording/amount.ts';
import { ComputedValue } from '../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../derivation/derivation-slot.tsx';
import styles from './charts.module.css';
import { TESTED_QUANTITIES, type TestedCoupon, type TestedQuantity } from './tested-quantities.ts';
import { Twin } from './twin.tsx';

const COLUMNS = 4;

interface TestedTableProps {
  readonly quantity: TestedQuantity;
  readonly coupons: readonly TestedCoupon[];
}

/** The coupons of a picture as a table. */
export function TestedTable({ quantity, coupons }: TestedTableProps) {
  const { column, caption } = TESTED_QUANTITIES[quantity];
  return (
    <Twin summary="The coupons as a table">
      <table className={styles['table']}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Test</th>
            <th scope="col">Knurl ⌀</th>
            <th scope="col">Length</th>
            <th scope="col">{column}</th>
          </tr>
        </thead>
        <tbody>
          {coupons.map((coupon) => (
            <CouponRow key={coupon.testId} coupon={coupon} slot={`${quantity} ${coupon.testId}`} />
          ))}
        </tbody>
      </table>
    </Twin>
  );
}

function CouponRow({ coupon, slot }: { readonly coupon: TestedCoupon; readonly slot: string }) {
  const { testId, knurlDiameter, length, says, value } = coupon;
  const name = testId.replace('-', ' ');
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{name}</th>
        <td>
          <Amount of={knurlDiameter} what={`${name}, knurl diameter`} />
        </td>
        <td>
          <Amount of={length} what={`${name}, length`} />
        </td>
        <td>
          {says === 'held' ? 'at least ' : ''}
          <Amount of={value} what={name} />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}

function Amount({ of, what }: { readonly of: Derived; readonly what: string }) {
  const text = amountText(of.value, of.unit);
  return <ComputedValue derived={of} text={text} label={`${what}, ${text}`} />;
}
