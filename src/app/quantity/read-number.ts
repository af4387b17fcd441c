import type { Refusal } from './parsed-quantity.ts';

/** A number as typed, in the digits that a program reads. */
export interface ReadNumber {
  readonly kind: 'number';
  readonly digits: string;
}

const refused = (refusal: Refusal): Refusal => refusal;

/** 1,250.5 or 1,250,000: commas that can only stand between thousands. */
const COMMA_GROUPS = /^\d{1,3}(?:,\d{3})+$/;
/** 1.250,5: points between thousands before a decimal comma. */
const POINT_GROUPS = /^\d{1,3}(?:\.\d{3})+$/;

function withExponent(whole: string, exponent: string): ReadNumber {
  return { kind: 'number', digits: `${whole}${exponent}` };
}

/** A comma alone is decimal, unless exactly three digits make it as likely a mark of thousands. */
function readOneComma(typed: string, exponent: string): ReadNumber | Refusal {
  const [before = '', after = ''] = typed.split(',');
  const isAmbiguous = /^[1-9]\d{0,2}$/.test(before) && /^\d{3}$/.test(after);
  if (!isAmbiguous) return withExponent(`${before}.${after}`, exponent);
  return refused({
    kind: 'refused',
    code: 'ambiguous-separator',
    typed: `${typed}${exponent}`,
    asPoint: `${before}.${after}${exponent}`,
    asThousands: `${before}${after}${exponent}`,
  });
}

/** Reads the digits of one number without sign: decimal point or comma, thousands where they are beyond doubt. */
export function readNumber(text: string): ReadNumber | Refusal {
  const [, typed = '', exponent = ''] = /^([\d.,]*)([eE][+-]?\d+)?$/.exec(text) ?? [];
  const commas = typed.split(',').length - 1;
  const points = typed.split('.').length - 1;
  const wrong = refused({ kind: 'refused', code: 'not-a-number' });
  if (!/\d/.test(typed)) return wrong;
  if (commas === 0) return points <= 1 ? withExponent(typed, exponent) : wrong;
  if (commas === 1 && points === 0) return readOneComma(typed, exponent);
  const lastMark = Math.max(typed.lastIndexOf(','), typed.lastIndexOf('.'));
  const [head, tail] = [typed.slice(0, lastMark), typed.slice(lastMark + 1)];
  if (points === 0)
    return COMMA_GROUPS.test(typed) ? withExponent(typed.replaceAll(',', ''), exponent) : wrong;
  if (points === 1 && typed[lastMark] === '.' && COMMA_GROUPS.test(head)) {
    return withExponent(`${head.replaceAll(',', '')}.${tail}`, exponent);
  }
  if (commas === 1 && typed[lastMark] === ',' && POINT_GROUPS.test(head)) {
    return withExponent(`${head.replaceAll('.', '')}.${tail}`, exponent);
  }
  return wrong;
}
