import { Fragment } from 'react';
import styles from './formula.module.css';
import type { ValuesPutIn } from './formula-math.ts';
import { piecesOf } from './formula-pieces.ts';
import { math, text as plainText } from './math-element.ts';
import { parseFormula } from './parse-formula.ts';

export interface FormulaProps {
  /** Plain text, as the core writes it; also what is read aloud. */
  readonly text: string;
  /** Values by symbol, put in where the symbols stand. */
  readonly values?: ValuesPutIn;
}

const NO_VALUES: ValuesPutIn = new Map();
/** A line may break here, and nothing is seen. */
const MAY_BREAK = '\u200b';

/** A formula or a symbol set as mathematics: fractions, roots, powers, subscripts. */
export function Formula({ text, values = NO_VALUES }: FormulaProps) {
  const node = parseFormula(text);
  const pieces = node === undefined ? [{ of: plainText(text), isWord: true }] : piecesOf(node, values);
  const spoken = values.size === 0 ? { role: 'math', 'aria-label': text } : {};
  return (
    <span className={styles['formula']} {...spoken}>
      {pieces.map(({ of, isWord }, index) => {
        // A formula is a fixed sequence: its places are its keys.
        const key = `${text} ${index}`;
        return (
          <Fragment key={key}>
            {index > 0 && (isWord ? ' ' : MAY_BREAK)}
            {math('math', { displaystyle: 'true' }, of)}
          </Fragment>
        );
      })}
    </span>
  );
}
