import { useEffect, useId, useRef, useState } from 'react';
import type { Derived, Entry } from '../../core/sources/derived.ts';
import { wayOf } from '../../core/steps/steps.ts';
import { capitalised, derivedText } from '../../wording/amount.ts';
import { littleKnownText } from '../../wording/little-known.ts';
import { sourceWords, standingOf } from '../../wording/standing.ts';
import { meaningOf, meaningOfEntry } from '../../wording/symbols.ts';
import { validityOf } from '../../wording/validity.ts';
import styles from './derivation.module.css';
import { Formula } from './formula.tsx';
import { FormulaLine } from './formula-line.tsx';
import { hasValues } from './has-values.ts';
import { useEscape } from './use-escape.ts';
import values from './value.module.css';

/** One line of a derivation: formula, the values put in, the result, what the symbols mean, and the source. */
export function DerivationStep({ derived, within }: { readonly derived: Derived; readonly within?: string }) {
  const standing = standingOf(derived);
  const source = sourceWords(derived.source);
  const known = new Map(derived.entries.map((entry) => [entry.symbol, derivedText(entry)]));
  const validity = validityOf(derived);
  const littleKnown = littleKnownText(derived, (value) => derivedText({ ...derived, value }));
  return (
    <div className={styles['step']}>
      <div>
        {derived.formula !== derived.symbol && (
          <FormulaLine label="Formula" className={styles['equation']}>
            <Formula text={derived.symbol} /> = <Formula text={derived.formula} />
          </FormulaLine>
        )}
        {derived.formula !== derived.symbol && hasValues(derived.formula, known) && (
          <FormulaLine label="Formula with its values" className={styles['values']}>
            = <Formula text={derived.formula} values={known} />
          </FormulaLine>
        )}
        <p className={styles['result']}>
          {meaningOf(derived, within)} = <b>{derivedText(derived)}</b>
        </p>
        {littleKnown === undefined ? null : <p>{littleKnown}</p>}
        <Entries derived={derived} />
      </div>
      <div className={styles['source']}>
        <p className={styles['standing']}>
          <span aria-hidden="true">{standing.sign}</span> {standing.words}
        </p>
        <p>{source.title}</p>
        {source.note !== undefined && <p>{source.note}</p>}
        {validity !== undefined && <p>{validity}</p>}
      </div>
    </div>
  );
}

function Entries({ derived }: { readonly derived: Derived }) {
  if (derived.entries.length === 0) return null;
  return (
    <dl className={styles['entries']}>
      {derived.entries.map((entry) => (
        <EntryRow key={entry.symbol} entry={entry} within={derived} />
      ))}
    </dl>
  );
}

/** A value put in; one that was computed opens its own derivation beneath itself. */
function EntryRow({ entry, within }: { readonly entry: Entry; readonly within: Derived }) {
  const way = wayOf(entry);
  return (
    <div className={styles['entry']}>
      <dt>
        <span className={styles['symbol']}>
          <Formula text={entry.symbol} />
        </span>
        <span>{meaningOfEntry(entry, within)}</span>
      </dt>
      <dd>
        {way === undefined ? derivedText(entry) : <NestedValue entry={entry} from={way} within={within} />}
      </dd>
    </div>
  );
}

interface NestedValueProps {
  readonly entry: Entry;
  readonly from: Derived;
  readonly within: Derived;
}

function NestedValue({ entry, from, within }: NestedValueProps) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const nested = useRef<HTMLElement>(null);
  const [open, setOpen] = useState(false);
  useEffect(() => {
    if (open) nested.current?.focus();
  }, [open]);
  const text = derivedText(entry);
  const name = `${capitalised(meaningOfEntry(entry, within))}, ${text}`;
  const close = () => {
    setOpen(false);
    button.current?.focus();
  };
  useEscape(button, open ? close : undefined);
  useEscape(nested, open ? close : undefined);
  return (
    <>
      <button
        ref={button}
        type="button"
        className={`${values['value']} ${values['ruled']}`}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        aria-label={`${name}, open derivation`}
        onClick={() => setOpen(!open)}
      >
        {text}
      </button>
      {open && (
        <section
          ref={nested}
          id={id}
          className={styles['nested']}
          aria-label={`Derivation: ${name}`}
          tabIndex={-1}
        >
          <DerivationStep derived={from} within={within.symbol} />
        </section>
      )}
    </>
  );
}
