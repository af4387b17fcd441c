import type { Derived } from '../../core/sources/derived.ts';
import { percentText } from '../../wording/amount.ts';
import { bondText } from '../../wording/test-findings.ts';
import { ComputedValue } from '../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../derivation/derivation-slot.tsx';
import type { BondCurves } from './bond-curves.ts';
import styles from './charts.module.css';
import { Twin } from './twin.tsx';

interface BondTwinProps {
  readonly curves: BondCurves;
  /** Of the insert. */
  readonly name: string;
}

/** The picture of the bond factor as a table, each number with its derivation. */
export const BondTwin = ({ curves: { quantiles, marks }, name }: BondTwinProps) => (
  <Twin summary="The picture as a table">
    <table className={styles['table']}>
      <caption>Bond factor that a share of the next joints stays below</caption>
      <thead>
        <tr>
          <th scope="col">Share below</th>
          <th scope="col">without tests</th>
          <th scope="col">with them</th>
        </tr>
      </thead>
      <tbody>
        {quantiles.map(({ share, before, after }) => (
          <DerivationRow key={share} slot={`bond ${name} ${share}`}>
            <tr>
              <th scope="row">{percentText(share)}</th>
              <td>
                <Bond of={before} what={`${percentText(share)} below, without tests`} />
              </td>
              <td>
                <Bond of={after} what={`${percentText(share)} below, with them`} />
              </td>
            </tr>
            <DerivationSlot name={`bond ${name} ${share}`} columns={3} />
          </DerivationRow>
        ))}
      </tbody>
    </table>
    <table className={styles['table']}>
      <caption>The coupons of this size</caption>
      <thead>
        <tr>
          <th scope="col">Test</th>
          <th scope="col">Bond factor</th>
        </tr>
      </thead>
      <tbody>
        {marks.map(({ testId, says, bond }) => (
          <DerivationRow key={testId} slot={`bond ${testId}`}>
            <tr>
              <th scope="row">{testId.replace('-', ' ')}</th>
              <td>
                {says === 'held' ? 'at least ' : ''}
                <Bond of={bond} what={`${testId.replace('-', ' ')}, bond factor`} />
              </td>
            </tr>
            <DerivationSlot name={`bond ${testId}`} columns={2} />
          </DerivationRow>
        ))}
      </tbody>
    </table>
  </Twin>
);

const Bond = ({ of, what }: { readonly of: Derived; readonly what: string }) => (
  <ComputedValue derived={of} text={bondText(of.value)} label={`${what}, ${bondText(of.value)}`} />
);
