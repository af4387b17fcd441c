import type { SourceId } from '../../core/sources/sources.ts';
import { capitalised, torqueText } from '../../wording/amount.ts';
import { carriedText } from '../../wording/carried.ts';
import { littleKnownText } from '../../wording/little-known.ts';
import { standingOf } from '../../wording/standing.ts';
import { meaningOf, meaningOfEntry } from '../../wording/symbols.ts';
import { validityOf } from '../../wording/validity.ts';
import { Formula } from '../derivation/formula.tsx';
import { FormulaLine } from '../derivation/formula-line.tsx';
import { hasValues } from '../derivation/has-values.ts';
import { isGiven as isOnlyGiven, type Step, type StepEntry } from './calculation-steps.ts';
import styles from './step-row.module.css';

export interface StepRowProps {
  readonly step: Step;
  /** Number of a source in the list at the end. */
  readonly numberOfSource: (source: SourceId) => number;
}

/** One step: its number, the quantity, formula, values, result; standing and source at the right. */
export function StepRow({ step, numberOfSource }: StepRowProps) {
  const { number, derived, entries, within } = step;
  const values = new Map(
    derived.entries.map(({ symbol, value, unit }) => [symbol, carriedText(value, unit)]),
  );
  const standing = standingOf(derived);
  const validity = validityOf(derived);
  const isGiven = isOnlyGiven(derived);
  const littleKnown = littleKnownText(derived, (value) => carriedText(value, derived.unit));
  return (
    <li className={styles['step']} id={`step-${number}`}>
      <span className={styles['number']}>({number})</span>
      <div className={styles['work']}>
        <p className={styles['name']}>{capitalised(meaningOf(derived, within))}</p>
        <FormulaLine label={`Step ${number}, formula`} className={styles['equation']}>
          <span>
            <Formula text={derived.symbol} />
            {!isGiven && (
              <>
                {' = '}
                <Formula text={derived.formula} />
              </>
            )}
          </span>{' '}
          {!isGiven && hasValues(derived.formula, values) && (
            <span className={styles['values']}>
              = <Formula text={derived.formula} values={values} />
            </span>
          )}{' '}
          <span>
            = <b className={styles['result']}>{carriedText(derived.value, derived.unit)}</b>
            {derived.unit === 'N·mm' && ` (${torqueText(derived.value)})`}
          </span>
        </FormulaLine>
        {littleKnown === undefined ? null : <p>{littleKnown}</p>}
        {!isGiven && entries.length > 0 && (
          <ul className={styles['entries']}>
            {entries.map((one) => (
              <EntryItem key={one.entry.symbol} of={one} step={step} />
            ))}
          </ul>
        )}
      </div>
      <div className={styles['known']}>
        <span aria-hidden="true">{standing.sign}</span> {standing.words}{' '}
        <span className={styles['source']}>[{numberOfSource(derived.source)}]</span>
        {validity !== undefined && <p>{validity}</p>}
      </div>
    </li>
  );
}

/** A value put in: by the number of its step, or with its meaning where it is given. */
function EntryItem({ of: { entry, step: from }, step }: { readonly of: StepEntry; readonly step: Step }) {
  return (
    <li>
      <Formula text={entry.symbol} />{' '}
      {from === undefined ? (
        <>
          {meaningOfEntry(entry, step.derived)} <span>{carriedText(entry.value, entry.unit)}</span>
        </>
      ) : (
        <a href={`#step-${from}`}>({from})</a>
      )}
    </li>
  );
}
