import type { BondPosterior } from '../core/evidence/coupon-ratio.ts';
import type { SettingMethod } from '../core/inserts/insert.ts';
import type { Capacity } from '../core/pull-out/limit.ts';
import type { Derived } from '../core/sources/derived.ts';
import { capitalised, countWord, forceText } from './amount.ts';
import { SETTING_NAMES } from './names.ts';
import { figure, type Sentence, said } from './sentence.ts';
import { bondText } from './test-findings.ts';

const testsWord = (count: number): string => (count === 1 ? 'one test' : `${countWord(count)} tests`);

/** A set-up by what makes it one: material, setting method, printer where it is named. */
export const nameOfSetup = (setup: {
  readonly material: string;
  readonly setting: SettingMethod;
  readonly printer?: string | undefined;
}): string =>
  `${setup.material}, ${SETTING_NAMES[setup.setting]}${setup.printer === undefined ? '' : `, ${setup.printer}`}`;

/** What half and what 19 of 20 hold. */
type Holds = Pick<Capacity, 'median' | 'characteristic'>;

/** What moved, and from where: a force, or a bond factor where the set-up is not the joint's. */
export interface Moved {
  readonly coupons: number;
  readonly broke: number;
  /** Of what the value is: the name of an insert. */
  readonly of: string;
  readonly before: Holds;
  readonly after: Holds;
}

function sentence(moved: Moved, what: string, text: (value: number) => string): Sentence {
  const { coupons, broke, before, after } = moved;
  const who = capitalised(testsWord(coupons));
  const shown = (of: Derived, name: string) => figure(of, text(of.value), name);
  const half = (of: Holds, when: string) => shown(of.median, `Half hold ${when}`);
  const most = (of: Holds, when: string) => shown(of.characteristic, `19 of 20 hold ${when}`);
  const ends = said`19 of 20 hold ${most(after, 'with the tests')}, ${most(before, 'without them')} without ${coupons === 1 ? 'it' : 'them'}.`;
  if (text(before.median.value) === text(after.median.value)) {
    return said`${who} left ${what} at ${half(after, 'with the tests')}, where our estimate was; ${ends}`;
  }
  const known = broke === 0 ? 'shown at least' : 'measured';
  return said`${who} moved ${what} from ${half(before, 'without tests')}, our estimate, to ${half(after, 'with the tests')}, ${known}; ${ends}`;
}

/** What the tests of the joint's own set-up moved: "Three tests moved the pull-out of M3 5.0 × 5.0 from …". */
export const sentenceOfMovedForce = (moved: Moved): Sentence =>
  sentence(moved, `the pull-out of ${moved.of}`, forceText);

/** The same of another set-up, whose joint is not on the sheet. */
export const sentenceOfMovedBond = (moved: Moved): Sentence =>
  sentence(moved, `the bond factor of ${moved.of}`, bondText);

/** How the posterior was worked out, for whoever wants to do it again. */
export const METHOD_SENTENCES = {
  prior: 'No coupon spoke: what is assumed of every set-up.',
  'closed-form':
    'Every coupon broke and was read sharply, so the result is a closed form: the conjugate prior of a normal logarithm.',
  grid: 'Some coupons only held, or were read coarsely or by torque, so the result is summed over a grid.',
} as const satisfies Record<BondPosterior['method'], string>;

/** Where the tests do not carry: said whenever there are any. */
export const CARRIES_OVER =
  'A bond factor carries over only at about the same knurled length over knurl diameter, set in the same way.';

export const ONLY_AT_LEAST =
  'None of them broke. A coupon that held says “at least”, so the median is not taken above what was shown or estimated.';

export const SOME_AT_LEAST =
  'Coupons that held say “at least”: they pull the bond up where it would lie below them, and never down.';

/** One sentence for the fifth answer: how many tests speak, or why none does. */
export function reasonForTests(told: {
  /** Entered in all. */
  readonly tests: number;
  /** Set-ups of which something is said. */
  readonly setups: number;
  /** Tests of the joint's own set-up that speak; absent: none. */
  readonly speaking?: number;
  readonly isLeftOut?: boolean;
}): string {
  const { tests, setups, speaking, isLeftOut } = told;
  if (tests === 0) return 'One pulled coupon turns the bond from an estimate into yours.';
  if (speaking === undefined) {
    return setups === 0
      ? 'No test says anything of the bond yet: the log tells why.'
      : 'The tests are of other set-ups: another printer, material or way of setting.';
  }
  const who = `${capitalised(testsWord(speaking))} of this set-up`;
  return isLeftOut === true
    ? `${who} moved the pull-out; the answers leave ${speaking === 1 ? 'it' : 'them'} out.`
    : `${who} moved the pull-out, and with it every answer.`;
}
