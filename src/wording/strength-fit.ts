import type { Growth, StrengthFit } from '../core/bench/strength-fit.ts';
import type { Dimension, PutOver } from '../core/bench/strength-points.ts';
import { countWord, decimalText, forceNumber, NO_BREAK_SPACE, torqueNumber } from './amount.ts';
import { figure, type Sentence, said } from './sentence.ts';

export const PUT_OVER_NAMES = {
  length: 'knurled length',
  diameter: 'knurl diameter',
  both: 'length and diameter',
} as const satisfies Record<PutOver, string>;

export const DIMENSION_NAMES = {
  length: 'knurled length',
  diameter: 'knurl diameter',
} as const satisfies Record<Dimension, string>;

/** Why there is no regression, and what would make one. */
export function sentenceOfNoFit(
  refused: Extract<StrengthFit, { readonly kind: 'refused' }>,
  over: PutOver,
): string {
  switch (refused.code) {
    case 'too-few-points':
      return `${refused.points === 1 ? 'One coupon gave' : `${countCapitalised(refused.points)} coupons gave`} way here; a regression takes ${countWord(refused.least)}.`;
    case 'one-size':
      return `All of these coupons have about one ${DIMENSION_NAMES[refused.of]}. Test an insert of another one${over === 'both' ? '' : ', or put strength over both'}.`;
    case 'goes-with-the-other':
      return 'Length and diameter go together in these coupons, so that nobody can tell which of them counts. Test an insert that is long and slim, or short and wide.';
  }
}

const countCapitalised = (count: number): string => {
  const word = countWord(count);
  return `${word.slice(0, 1).toUpperCase()}${word.slice(1)}`;
};

/** Whether the coupons grow as the model has it. */
export function sentenceOfGrowth({ of, power, modelPower, verdict }: Growth): Sentence {
  const name = DIMENSION_NAMES[of];
  const law = modelPower.value === 1 ? `in proportion to the ${name}` : `with the square of the ${name}`;
  const inModel = figure(modelPower, decimalText(modelPower.value, 0), `Power of the ${name} in the model`);
  const asked = said`The model lets strength grow ${law}: power ${inModel}.`;
  if (power === undefined || verdict === undefined) return asked;
  const { value } = power;
  const found = said`Yours goes with power ${figure(value, decimalText(value.value, 2), `Power of the ${name}`)}`;
  switch (verdict) {
    case 'agrees':
      return said`${asked} ${found}, which agrees.`;
    case 'differs':
      return said`${asked} ${found}, which does not agree: go by your coupons, and look at what else differs.`;
    case 'open':
      return said`${asked} ${found}: it may be that, but these coupons do not even tell whether strength grows.`;
  }
}

/** Two sizes always lie on a line. */
export const sentenceOfTwoSizes = (of: Dimension): string =>
  `Only two ${DIMENSION_NAMES[of]}s were tested: two always lie on a line, so nothing is said of how straight it is.`;

/** A slope as it is read: newtons, or newton metres, for each millimetre. */
export const slopeText = (slope: number, kind: 'force' | 'torque'): string =>
  kind === 'force'
    ? `${forceNumber(slope)}${NO_BREAK_SPACE}N/mm`
    : `${torqueNumber(slope)}${NO_BREAK_SPACE}N·m/mm`;
