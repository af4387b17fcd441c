import type { JointDocument } from '../../storage/document.ts';
import { lengthNumber } from '../../wording/amount.ts';
import { placeOfPath, unitOfPath } from '../../wording/places.ts';
import { NO_BREAK_SPACE } from '../quantity/format.ts';
import { QUANTITIES } from './quantities.ts';
import { valueIn } from './value-in.ts';

const INITIAL = /^[A-Z](?=[a-z])/;

/** What a value of the document is called in a running line: "clearance hole ⌀". */
export function nameOfPath(path: string): string {
  const named = Object.values(QUANTITIES).find((quantity) => quantity.path === path);
  if (named) return named.label.replace(INITIAL, (letter) => letter.toLowerCase());
  const words = placeOfPath(path).split(', ');
  return words.at(-1) ?? path;
}

/** The value that stands in the document, short; empty where words would say more than a value. */
export function shownAtPath(document: JointDocument, path: string): string {
  const value = valueIn(document, path);
  const values: readonly unknown[] = Array.isArray(value) ? value : [value];
  const unit = unitOfPath(path);
  const texts = values
    .filter((one) => typeof one === 'number')
    .map((one) => (unit === 'mm' ? lengthNumber(one) : String(one)));
  if (texts.length === 0) return '';
  return unit === '' ? texts.join(', ') : `${texts.join(', ')}${NO_BREAK_SPACE}${unit}`;
}
