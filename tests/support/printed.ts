const DECIMAL_NUMBER = /^[+\-−]?\d+(?:\.(?<decimals>\d+))?(?:e(?<exponent>[+-]?\d+))?$/;

/** A printed number, and half a unit of its last printed digit. */
export interface Printed {
  readonly value: number;
  readonly halfUnit: number;
}

/** The number that a source prints, read from its text ('14.20', not 14.2), so that the tolerance is in the digits. */
export function readPrinted(text: string): Printed {
  const parts = DECIMAL_NUMBER.exec(text)?.groups;
  if (parts === undefined) throw new Error(`not a printed number: "${text}"`);
  const lastPlace = Number(parts['exponent'] ?? 0) - (parts['decimals']?.length ?? 0);
  return { value: Number(text.replace('−', '-')), halfUnit: 0.5 * 10 ** lastPlace };
}
