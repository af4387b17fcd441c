import { derivedText, factorText } from '../../../wording/amount.ts';
import { nameOfEnd, whenOf } from '../../../wording/hold.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import type { EndCell } from './end-rows.ts';
import { MarginBar } from './margin-bar.tsx';
import styles from './will-it-hold.module.css';

/** What one way to end comes to in one state: its bar, its margin, held for asked. */
export function MarginCell({ cell }: { readonly cell: EndCell }) {
  const { state, margin } = cell;
  if (margin?.margin === undefined) {
    return (
      <div className={styles['cell']}>
        <MarginBar margin={margin} />
        <p className={styles['unloaded']}>not loaded</p>
      </div>
    );
  }
  const text = factorText(margin.margin.value);
  const [held, asked] = [derivedText(margin.held), derivedText(margin.asked)];
  const name = `${nameOfEnd(margin.by)}, ${whenOf(state)}`;
  return (
    <div className={styles['cell']} data-governs={margin.governs || undefined}>
      <MarginBar margin={margin} />
      <p className={styles['factor']}>
        {margin.governs && <em>governs</em>}{' '}
        <ComputedValue
          derived={margin.margin}
          text={text}
          label={`${name}, ${text}, ${held} held for ${asked} asked`}
        />
        <span className={styles['balance']}>
          <ComputedValue derived={margin.held} text={withoutUnit(held)} label={`${name}, ${held} held`} /> for{' '}
          <ComputedValue derived={margin.asked} text={asked} label={`${name}, ${asked} asked`} />
        </span>
      </p>
    </div>
  );
}

/** Held and asked have one unit, said once. */
const withoutUnit = (text: string): string => text.replace(/\u00a0.*$/u, '');
