import { REFERENCE_TEMPERATURE } from '../core/host/temperature.ts';
import type { FailureMode } from '../core/pull-out/limit.ts';
import type { Hold } from '../core/service/hold.ts';
import type { Margin } from '../core/service/margins.ts';
import type { Loosening, ServiceState, StateId } from '../core/service/service-state.ts';
import type { Derived } from '../core/sources/derived.ts';
import { amountText, capitalised, durationText, factorText, temperatureText } from './amount.ts';
import { MODE_AGENTS, MODE_NAMES } from './names.ts';
import { figure, type Sentence, said, told } from './sentence.ts';

export const STATE_NAMES = {
  assembly: 'While tightening',
  'in-service': 'In service',
  after: 'After the time',
} as const satisfies Record<StateId, string>;

export const LOOSENING_NAMES = {
  opens: 'Joint opens',
  slips: 'Joint slips',
} as const satisfies Record<Loosening, string>;

const END_NAMES: Record<FailureMode | Loosening, string> = { ...MODE_NAMES, ...LOOSENING_NAMES };

/** What ends a joint: a failure mode, opening or slipping. */
export const nameOfEnd = (by: FailureMode | Loosening): string => END_NAMES[by];

const isWarm = ({ temperature }: ServiceState): boolean => temperature > REFERENCE_TEMPERATURE;

/** Heading of a state: when it is. */
export const titleOfState = (state: ServiceState): string =>
  state.id === 'after' ? `After ${durationText(state.hours)}` : STATE_NAMES[state.id];

/** What a state is like, beneath its heading. */
export function conditionOfState(state: ServiceState): string {
  const at = `at ${temperatureText(state.temperature)}`;
  switch (state.id) {
    case 'assembly':
      return `${at}, the screw turning, no load`;
    case 'in-service':
      return `${at}, all loads at once`;
    case 'after':
      return `${at}, all loads for all of the time`;
  }
}

/** When, as the end of a clause: "warm and loaded, at 40 °C". */
export function whenOf(state: ServiceState): string {
  const at = `at ${temperatureText(state.temperature)}`;
  switch (state.id) {
    case 'assembly':
      return 'while tightening';
    case 'in-service':
      return isWarm(state) ? `warm and loaded, ${at}` : `loaded, ${at}`;
    case 'after':
      return `after ${durationText(state.hours)} ${at}`;
  }
}

/** Held and asked, with the factor that is asked besides. */
function balanceOf(margin: Margin, factor: number): Sentence {
  const [held, asked] = [told(margin.held), told(margin.asked)];
  switch (margin.by) {
    case 'opens':
      return said`${held} clamp, ${asked} needed`;
    case 'slips':
      return said`friction holds ${held}, ${asked} needed`;
    default:
      return said`${held} held, ${asked}${factor > 1 ? ` times ${amountText(factor, '-')}` : ''} asked`;
  }
}

const LOOSENING_CLAUSES = {
  opens: 'the joint opens first',
  slips: 'the joint slips first',
} as const satisfies Record<Loosening, string>;

const clauseOf = (by: FailureMode | Loosening): string =>
  by === 'opens' || by === 'slips' ? LOOSENING_CLAUSES[by] : `${MODE_AGENTS[by]} gives way first`;

/** What governs, when, and by what numbers. */
export const sentenceOfMargin = (state: ServiceState, margin: Margin, factor: number): Sentence =>
  said`${capitalised(clauseOf(margin.by))}${whenAndBalance(state, margin, factor)}`;

const whenAndBalance = (state: ServiceState, margin: Margin, factor: number): Sentence =>
  said`, ${whenOf(state)}: ${balanceOf(margin, factor)}.`;

/** Why the joint holds or does not, in one sentence; without a setting, at the most that the limits allow. */
export function reasonForService(
  { worst, torque }: Hold,
  margin: Margin | undefined,
  { factor, isDialled }: { readonly factor: number; readonly isDialled: boolean },
): Sentence {
  if (margin === undefined) return [];
  return isDialled
    ? sentenceOfMargin(worst, margin, factor)
    : said`No setting fits. At the most, ${told(torque)}: ${clauseOf(margin.by)}${whenAndBalance(worst, margin, factor)}`;
}

/** The verdict on the whole life, with the torque it is for and the smallest margin. */
export function sentenceOfVerdict(hold: Hold, margin: Derived, isDialled: boolean): Sentence {
  const [at, least] = [told(hold.torque), figure(margin, factorText(margin.value))];
  if (!isDialled) {
    return said`No setting fits, so there is nothing to hold; drawn at the largest torque that the limits allow, ${at}.`;
  }
  return hold.verdict === 'holds'
    ? said`Dialled at ${at} it holds through its life: at the least ${least} what is asked.`
    : said`Dialled at ${at} it does not hold ${whenOf(hold.worst)}: ${least} what is asked.`;
}

/** Beside a verdict that hangs on what is little known. */
export const HOLDS_AT_BEST =
  'Little is known of how this plastic creeps and bears warmth, and the careful end decides. At the other end the joint would hold.';
