import type { JointDocument } from '../../storage/document.ts';
import { lengthNumber } from '../../wording/amount.ts';
import { placeOfPath, unitOfPath } from '../../wording/places.ts';
import { NO_BREAK_SPACE } from '../quantity/format.ts';
import { GROUP_QUANTITIES } from './group-quantities.ts';
import { type NamedQuantity, QUANTITIES } from './quantities.ts';
import { valueIn } from './value-in.ts';

const INITIAL = /^[A-Z](?=[a-z])/;
const NAMED: readonly NamedQuantity[] = [...Object.values(QUANTITIES), ...Object.values(GROUP_QUANTITIES)];
/** Says nothing without what it belongs to. */
const COORDINATE = /^[xyz]$/;

/** What a value of the document is called in a running line: "clearance hole ⌀". */
export function nameOfPath(path: string): string {
  const named = NAMED.find((quantity) => quantity.path === path);
  if (named) return named.label.replace(INITIAL, (letter) => letter.toLowerCase());
  const words = placeOfPath(path).split(', ');
  const last = words.at(-1) ?? path;
  return COORDINATE.test(last) ? words.slice(-2).join(', ') : last;
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

/** What the answers go by instead of what waits in the fields: "knurl diameter 5.0 mm". */
export const answeringWords = (document: JointDocument, waiting: readonly string[]): string =>
  waiting.map((path) => `${nameOfPath(path)} ${shownAtPath(document, path)}`.trim()).join(', ');
