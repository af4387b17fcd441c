import type { BondRow, BondRows } from '../../../core/bench/bond-rows.ts';
import type { SetupEvidence } from '../../../core/bench/evidence.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { standingOf } from '../../../wording/standing.ts';
import { bondText } from '../../../wording/test-findings.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { nameOfTested } from './names.ts';
import styles from './what-tests-say.module.css';

const COLUMNS = 6;

interface BondTableProps {
  readonly rows: BondRows;
  readonly setup: SetupEvidence;
}

/** Bond factors of a set-up: estimated, and of each size as the coupons left it. */
export function BondTable({ rows: { before, rows }, setup }: BondTableProps) {
  const nameOf = nameOfTested(setup);
  const key = `${setup.printer ?? ''} ${setup.material} ${setup.setting}`;
  return (
    <table className={styles['table']}>
      <caption>Bond factor: the share of an ideal shear cylinder that the knurl holds</caption>
      <thead>
        <tr>
          <th scope="col">Next joint with</th>
          <th scope="col">coupons</th>
          <th scope="col">
            L<sub>k</sub>/D<sub>k</sub>
          </th>
          <th scope="col">half hold</th>
          <th scope="col">19 of 20 hold</th>
          <th scope="col">9 of 10 lie in</th>
        </tr>
      </thead>
      <tbody>
        <Row name="any insert, without tests" slot={`${key} before`} row={before} />
        {rows.map((row) => (
          <Row
            key={row.insertId ?? ''}
            name={row.insertId === undefined ? 'a size that was not pulled' : nameOf(row.insertId)}
            slot={`${key} ${row.insertId ?? ''}`}
            row={row}
          />
        ))}
      </tbody>
    </table>
  );
}

interface RowProps {
  readonly name: string;
  readonly slot: string;
  readonly row: Pick<BondRow, 'found' | 'low' | 'high'> & Partial<BondRow>;
}

function Row({ name, slot, row }: RowProps) {
  const { found, low, high, coupons = 0, broke = 0, slenderness } = row;
  const { sign, words } = standingOf(found.median);
  const held = coupons - broke;
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">
          {name}{' '}
          <span className="line">
            {sign} {words}
          </span>
        </th>
        <td data-name="coupons">
          {coupons === 0 ? 'none' : `${coupons}${held === 0 ? '' : `, ${held} held`}`}
        </td>
        <td data-name="Lk/Dk">
          {slenderness ? <Bond of={slenderness} what={`Knurled length over diameter of ${name}`} /> : '–'}
        </td>
        <td data-name="half hold">
          <Bond of={found.median} what={`Bond factor, ${name}, half hold`} />
        </td>
        <td data-name="19 of 20 hold">
          <Bond of={found.characteristic} what={`Bond factor, ${name}, 19 of 20 hold`} />
        </td>
        <td data-name="9 of 10 lie in">
          <Bond of={low} what={`Bond factor, ${name}, lower end`} /> to{' '}
          <Bond of={high} what={`Bond factor, ${name}, upper end`} />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}

const Bond = ({ of, what }: { readonly of: Derived; readonly what: string }) => (
  <ComputedValue derived={of} text={bondText(of.value)} label={`${what}, ${bondText(of.value)}`} />
);
