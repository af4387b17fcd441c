import { amountText, lengthNumber, lengthText } from '../../wording/amount.ts';
import { ComputedValue } from '../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../derivation/derivation-slot.tsx';
import styles from './charts.module.css';
import { TESTED_QUANTITIES, type TestedCoupon, type TestedQuantity } from './tested-quantities.ts';

const COLUMNS = 4;

interface TestedTableProps {
  readonly quantity: TestedQuantity;
  readonly coupons: readonly TestedCoupon[];
}

/** The coupons of a picture as a table. */
export function TestedTable({ quantity, coupons }: TestedTableProps) {
  const { column, caption } = TESTED_QUANTITIES[quantity];
  return (
    <details className={styles['details']}>
      <summary className="go">The coupons as a table</summary>
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
    </details>
  );
}

function CouponRow({ coupon, slot }: { readonly coupon: TestedCoupon; readonly slot: string }) {
  const { testId, knurlDiameter, length, says, value } = coupon;
  const name = testId.replace('-', ' ');
  const text = amountText(value.value, value.unit);
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{name}</th>
        <td>{lengthText(knurlDiameter)}</td>
        <td>{lengthNumber(length)} mm</td>
        <td>
          {says === 'held' ? 'at least ' : ''}
          <ComputedValue derived={value} text={text} label={`${name}, ${text}`} />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}
