import { UNITS, type UnitKind, type UnitSymbol } from '../../core/units/units.ts';
import { amountText, fieldText, NO_BREAK_SPACE, quantityText, unitText } from '../quantity/format.ts';
import type { LikelyCause, Refusal } from '../quantity/parsed-quantity.ts';
import { plainText } from '../quantity/plain-text.ts';
import type { QuantityDefinition } from '../quantity/quantity-definition.ts';

/** What a sentence about a refused text needs to know of its field. */
export interface FieldFacts {
  readonly definition: QuantityDefinition;
  /** The refused text. */
  readonly text: string;
  /** The last valid value, core unit, as an example of what can be typed. */
  readonly value: number | null;
  /** The subject of a sentence, "A pull". */
  readonly noun?: string | undefined;
}

/** A repair as the text that would be typed. */
export interface TextRepair {
  readonly label: string;
  readonly text: string;
}

/** The sentences after "Not taken.", and what can be pressed instead of typing. */
export interface Words {
  readonly message: string;
  readonly repairs: readonly TextRepair[];
}

const KIND_WORDS: Readonly<Record<UnitKind | 'other', string>> = {
  length: 'a length',
  force: 'a force',
  torque: 'a torque',
  temperature: 'a temperature',
  pressure: 'a pressure',
  time: 'a time',
  ratio: 'a plain number',
  angle: 'an angle',
  other: 'something else',
};

const UNIT_WORDS: Readonly<Record<UnitKind, string>> = {
  length: 'A length can be in mm, cm, in or thou.',
  force: 'A force can be in N, kN, kgf or lbf.',
  torque: 'A torque can be in N·m, cN·m, kgf·cm or lbf·in.',
  temperature: 'A temperature can be in °C, °F or K.',
  pressure: 'A pressure can be in MPa, GPa or psi.',
  time: 'A time can be in hours, days, weeks, months or years.',
  ratio: 'A ratio is a plain number or in %.',
  angle: 'An angle can be in degrees or rad.',
};

/** A second unit that people think in, for the example. */
const OTHER_UNIT: Readonly<Partial<Record<UnitKind, UnitSymbol>>> = {
  length: 'in',
  force: 'kgf',
  torque: 'lbf·in',
  temperature: '°F',
};

const EXAMPLE_DIGITS = { significant: 2 } as const;

/** A core value with all its digits and the field's unit. */
function exactText(value: number, definition: QuantityDefinition): string {
  const number = fieldText(value, definition);
  const unit = unitText(definition.displayUnit, number);
  return unit === '' ? number : `${number}${NO_BREAK_SPACE}${unit}`;
}

/** "Type it as 180 N or 18 kgf.", from the last valid value or what is usual. */
function exampleWords({ definition, value }: FieldFacts): string {
  const example = value ?? definition.usual?.[0] ?? definition.min;
  if (example === undefined) return UNIT_WORDS[definition.kind];
  const first = exactText(example, definition);
  const other = OTHER_UNIT[definition.kind];
  if (other === undefined || example === 0 || other === definition.displayUnit) return `Type it as ${first}.`;
  const digits = definition.kind === 'temperature' ? { decimals: 0 } : EXAMPLE_DIGITS;
  return `Type it as ${first} or ${quantityText(example, other, digits)}.`;
}

function causeWords(likely: LikelyCause, { definition, text }: FieldFacts): Words {
  const meant = exactText(likely.proposal, definition);
  const repair = { label: `Take ${meant}`, text: fieldText(likely.proposal, definition) };
  switch (likely.cause) {
    case 'inches-as-mm': {
      const inches = `${plainText(text)} in`;
      return {
        message: `Is it in inches? ${inches} would be ${meant}.`,
        repairs: [{ label: `Take ${inches}`, text: inches }],
      };
    }
    case 'decimal-slip':
      return { message: `Is a decimal point missing? It would be ${meant}.`, repairs: [repair] };
    case 'radius-as-diameter':
      return { message: `Is it the radius? The diameter would be ${meant}.`, repairs: [repair] };
  }
}

function limitWords(
  refusal: Extract<Refusal, { code: 'below-limit' | 'above-limit' }>,
  facts: FieldFacts,
): Words {
  const { code, inclusive, limit, value, likely } = refusal;
  const within = {
    'below-limit': ['more than', 'at least'],
    'above-limit': ['less than', 'at most'],
  } as const;
  const bound = `${within[code][inclusive ? 1 : 0]} ${exactText(limit, facts.definition)}`;
  const message = `${facts.noun ?? 'This value'} must be ${bound}; ${exactText(value, facts.definition)} is not.`;
  if (likely === undefined) return { message, repairs: [] };
  const cause = causeWords(likely, facts);
  return { message: `${message} ${cause.message}`, repairs: cause.repairs };
}

/** The two readings of 1,000, each to be had by one press. */
function separatorWords(
  refusal: Extract<Refusal, { code: 'ambiguous-separator' }>,
  facts: FieldFacts,
): Words {
  const { typed, asThousands, asPoint } = refusal;
  const repairs = [asThousands, asPoint].map((digits) => {
    const text = plainText(facts.text).replace(typed, digits);
    return { label: `Take ${digits}`, text };
  });
  return { message: `${typed} can mean ${asThousands} or ${asPoint}. Which one?`, repairs };
}

export const alone = (message: string): Words => ({ message, repairs: [] });

/** Why a text is not taken, in plain English, with the likely cause and its repair. */
export function refusalWords(refusal: Refusal, facts: FieldFacts): Words {
  const example = exampleWords(facts);
  switch (refusal.code) {
    case 'empty':
      return alone(`The field is empty. ${example}`);
    case 'not-a-number':
      return alone(`There is no number that can be read. ${example}`);
    case 'not-understood':
      return alone(
        refusal.part === ''
          ? 'The sum is not complete. It can be as 4.25 + 0.3, with brackets.'
          : `“${refusal.part}” is not understood at its place. A sum can be as 4.25 + 0.3, with brackets.`,
      );
    case 'not-allowed':
      return alone(`“${refusal.part}” has no place here: numbers, units, + − × / ^, brackets and sqrt do.`);
    case 'too-long':
      return alone(`The text is longer than ${refusal.limit} characters.`);
    case 'not-finite':
      return alone('The sum has no finite result.');
    case 'unit-unknown':
      return alone(`“${refusal.unit}” is not a unit known here. ${UNIT_WORDS[facts.definition.kind]}`);
    case 'unit-missing':
      return alone('The parts of the sum do not go together. Give every part a unit of one kind, or none.');
    case 'wrong-kind':
      return alone(
        `${facts.noun ?? 'This value'} is ${KIND_WORDS[refusal.wanted]}; ${foundWords(refusal)}. ${example}`,
      );
    case 'ambiguous-separator':
      return separatorWords(refusal, facts);
    case 'negative':
      return alone(
        `${facts.noun ?? 'This value'} cannot be below zero; ${exactText(refusal.value, facts.definition)} is.`,
      );
    case 'below-limit':
    case 'above-limit':
      return limitWords(refusal, facts);
    case 'engine-missing':
      return alone(
        'Sums cannot be worked out now: that part of the program did not load. Type the result alone.',
      );
  }
}

/** "mm is a length" for a unit alone, "the sum is a torque" where units were put together. */
function foundWords({ found, unit }: Extract<Refusal, { code: 'wrong-kind' }>): string {
  const isUnitAlone = found !== 'other' && unit in UNITS && UNITS[unit as UnitSymbol].kind === found;
  return `${isUnitAlone ? unit : 'the sum'} is ${KIND_WORDS[found]}`;
}

/** The allowed range and the step, for those who hear the field. */
export function rangeWords(definition: QuantityDefinition): string {
  const { min, max, minInclusive = true, maxInclusive = true } = definition;
  const ends = [
    min === undefined
      ? undefined
      : `${minInclusive ? 'at least' : 'more than'} ${exactText(min, definition)}`,
    max === undefined ? undefined : `${maxInclusive ? 'at most' : 'less than'} ${exactText(max, definition)}`,
  ].filter((end) => end !== undefined);
  const range = ends.length === 0 ? '' : `${ends.join(', ').replace(/^./, (first) => first.toUpperCase())}. `;
  return `${range}Arrow keys step by ${amountText(definition.step, definition.displayUnit, { step: definition.step })}.`;
}
