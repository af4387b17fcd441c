import { RATIOS_TO_SEE, type WayComparison } from '../../../core/bench/compare-ways.ts';
import type { Way } from '../../../core/bench/ways.ts';
import type { TestsNeeded } from '../../../core/evidence/sample-size.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { decimalText, percentText } from '../../../wording/amount.ts';
import { wordsOfNoComparison, wordsOfTooMany } from '../../../wording/sample-report.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import styles from './what-tests-say.module.css';

interface WayTableProps {
  readonly compared: readonly WayComparison[];
  readonly nameOf: (way: Way) => string;
  readonly caption: string;
  readonly slot: string;
}

const COLUMNS = 4 + RATIOS_TO_SEE.length;

/** Each way over one of them, as a ratio with its interval. */
export const WayTable = ({ compared, nameOf, caption, slot }: WayTableProps) => (
  <table className={styles['table']}>
    <caption>{caption}</caption>
    <thead>
      <tr>
        <th scope="col">Way, coupons</th>
        <th scope="col">ratio</th>
        <th scope="col">95 % interval</th>
        <th scope="col">chance by scatter alone</th>
        {RATIOS_TO_SEE.map((ratio) => (
          <th key={ratio} scope="col">
            {toSee(ratio)}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {compared.map((one) => {
        const name = `${nameOf(one.way)}, ${one.way.sample.values.length}`;
        return <WayRow key={name} of={one} name={name} slot={`${slot} ${name}`} />;
      })}
    </tbody>
  </table>
);

const toSee = (ratio: number): string => `each to see ${percentText(ratio - 1)}`;

interface WayRowProps {
  readonly of: WayComparison;
  readonly name: string;
  readonly slot: string;
}

function WayRow({ of: { comparison, needed }, name, slot }: WayRowProps) {
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{name}</th>
        {comparison.kind === 'refused' ? (
          <>
            <td data-name="ratio">{wordsOfNoComparison(comparison)}</td>
            <td data-empty>–</td>
            <td data-empty>–</td>
          </>
        ) : (
          <>
            <td data-name="ratio">
              <Figure of={comparison.ratio.estimate.value} what={`${name}, ratio`} />
            </td>
            <td data-name="95 % interval">
              <Figure of={comparison.ratio.estimate.low} what={`${name}, lower end of the ratio`} /> to{' '}
              <Figure of={comparison.ratio.estimate.high} what={`${name}, upper end of the ratio`} />
            </td>
            <td data-name="chance by scatter alone">
              <Figure of={comparison.ratio.chance} what={`${name}, chance by scatter alone`} least={0.01} />
            </td>
          </>
        )}
        {RATIOS_TO_SEE.map((ratio, place) => (
          <td key={ratio} data-name={toSee(ratio)}>
            <Needed of={needed[place]} what={`${name}, coupons ${toSee(ratio)}`} />
          </td>
        ))}
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}

function Needed({ of, what }: { readonly of: TestsNeeded | undefined; readonly what: string }) {
  if (of === undefined) return null;
  return of.kind === 'refused' ? wordsOfTooMany(of) : <Figure of={of.each} what={what} decimals={0} />;
}

interface FigureProps {
  readonly of: Derived;
  readonly what: string;
  readonly decimals?: number;
  /** Below it nobody needs to know more. */
  readonly least?: number;
}

function Figure({ of, what, decimals = 2, least = Number.NEGATIVE_INFINITY }: FigureProps) {
  const text = of.value < least ? `below ${decimalText(least, decimals)}` : decimalText(of.value, decimals);
  return <ComputedValue derived={of} text={text} label={`${what}, ${text}`} />;
}
