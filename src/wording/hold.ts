import { REFERENCE_TEMPERATURE } from '../core/host/temperature.ts';
import type { FailureMode } from '../core/pull-out/limit.ts';
import type { Hold } from '../core/service/hold.ts';
import type { Margin } from '../core/service/margins.ts';
import type { Loosening, ServiceState, StateId } from '../core/service/service-state.ts';
import { amountText, capitalised, derivedText, durationText, factorText, temperatureText } from './amount.ts';
import { MODE_AGENTS, MODE_NAMES } from './names.ts';

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
function balanceOf(margin: Margin, factor: number): string {
  const held = derivedText(margin.held);
  const asked = derivedText(margin.asked);
  switch (margin.by) {
    case 'opens':
      return `${held} clamp, ${asked} needed`;
    case 'slips':
      return `friction holds ${held}, ${asked} needed`;
    default:
      return `${held} held, ${asked}${factor > 1 ? ` times ${amountText(factor, '-')}` : ''} asked`;
  }
}

const LOOSENING_CLAUSES = {
  opens: 'the joint opens first',
  slips: 'the joint slips first',
} as const satisfies Record<Loosening, string>;

const clauseOf = (by: FailureMode | Loosening): string =>
  by === 'opens' || by === 'slips' ? LOOSENING_CLAUSES[by] : `${MODE_AGENTS[by]} gives way first`;

/** What governs, when, and by what numbers. */
export function sentenceOfMargin(state: ServiceState, margin: Margin, factor: number): string {
  return `${capitalised(clauseOf(margin.by))}, ${whenOf(state)}: ${balanceOf(margin, factor)}.`;
}

/** Why the joint holds or does not, in one sentence; without a setting, at the most that the limits allow. */
export function reasonForService(
  { worst, torque }: Hold,
  margin: Margin | undefined,
  { factor, isDialled }: { readonly factor: number; readonly isDialled: boolean },
): string {
  const sentence = margin === undefined ? '' : sentenceOfMargin(worst, margin, factor);
  return isDialled ? sentence : `No setting fits. At the most, ${derivedText(torque)}: ${lowered(sentence)}`;
}

const lowered = (text: string): string => `${text.slice(0, 1).toLowerCase()}${text.slice(1)}`;

/** The verdict on the whole life, with the torque it is for. */
export function sentenceOfVerdict({ verdict, torque, worst }: Hold, isDialled: boolean): string {
  const at = derivedText(torque);
  if (!isDialled) {
    return `No setting fits, so there is nothing to hold; drawn at the largest torque that the limits allow, ${at}.`;
  }
  return verdict === 'holds'
    ? `Dialled at ${at} it holds through its life: at the least ${factorText(worst.margin)} what is asked.`
    : `Dialled at ${at} it does not hold ${whenOf(worst)}: ${factorText(worst.margin)} what is asked.`;
}

/** Beside a verdict that hangs on what is little known. */
export const HOLDS_AT_BEST =
  'Little is known of how this plastic creeps and bears warmth, and the careful end decides. At the other end the joint would hold.';
