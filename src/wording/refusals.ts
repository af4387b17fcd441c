import type { InsertFault } from '../core/inserts/insert-faults.ts';
import type { Refusal, RefusalCode } from '../storage/refusal.ts';
import { capitalised, decimalText, lengthText } from './amount.ts';
import { type FaultWords, wordsOfInsertFault } from './insert-faults.ts';
import { placeOfPath, unitOfPath } from './places.ts';

type Facts = Refusal['facts'];

/** A fact as it stands in a sentence, with a true minus. */
const text = (facts: Facts, key: string): string =>
  String(facts[key] ?? 'what was given').replace(/^-(?=\d)/, '\u2212');
const number = (facts: Facts, key: string): number => Number(facts[key] ?? 0);
const length = (facts: Facts, key: string): string => lengthText(number(facts, key));
const withUnit = (facts: Facts, key: string, path: string): string => {
  const unit = unitOfPath(path);
  return unit === '' ? text(facts, key) : `${text(facts, key)}\u00a0${unit}`;
};
const choices = (facts: Facts): string =>
  facts['choices'] === undefined ? 'It has no default.' : `Choose one of: ${text(facts, 'choices')}.`;

type WordsOfCode = (facts: Facts, path: string) => FaultWords;

const insertFault =
  (code: InsertFault['code']): WordsOfCode =>
  (facts) => {
    // The door fills the facts from the fault itself, so they are its fields.
    return wordsOfInsertFault({ ...facts, code } as InsertFault);
  };

const KIND_WORDS: Readonly<Record<string, string>> = {
  number: 'a number',
  string: 'a text',
  array: 'a list',
  object: 'a group of keys',
};

const WORDS = {
  'not-json': (facts) => ({
    wrong: `The text cannot be read as JSON: ${text(facts, 'reason')}.`.replace('..', '.'),
    cause: 'Was it cut short, or is a comma or a bracket missing?',
  }),
  'too-large': (facts) => ({
    wrong: `The text has ${decimalText(number(facts, 'characters'), 0)} characters; at most ${decimalText(number(facts, 'greatest'), 0)} are read.`,
    cause: 'Is it a joint document at all?',
  }),
  'not-ours': (facts) => ({
    wrong: `This is not a joint document: its format is not “${text(facts, 'wanted')}”.`,
    cause: 'Was another file picked?',
  }),
  'newer-version': (facts) => ({
    wrong: `The document has version ${text(facts, 'version')}; this program knows versions up to ${text(facts, 'known')}.`,
    cause: 'It was written by a newer program: load the page anew to get it.',
  }),
  missing: (facts) => ({ wrong: 'It is missing.', cause: choices(facts) }),
  'unknown-key': () => ({
    wrong: 'This key is not known here.',
    cause: 'Is its name or its place misspelt?',
  }),
  'wrong-kind': (facts) => ({
    wrong: `${capitalised(text(facts, 'value'))} is not ${KIND_WORDS[text(facts, 'wanted')] ?? `the kind wanted, ${text(facts, 'wanted')}`}.`,
    cause: 'A number stands without quotes and without its unit.',
  }),
  'not-a-choice': (facts) => ({
    wrong: `“${text(facts, 'value')}” is not one of the choices.`,
    cause: choices(facts),
  }),
  'below-limit': (facts, path) => ({
    wrong: `${withUnit(facts, 'value', path)} is below the least that is taken, ${withUnit(facts, 'least', path)}.`,
    cause: 'Is the decimal point or the unit another one?',
  }),
  'above-limit': (facts, path) => ({
    wrong: `${withUnit(facts, 'value', path)} is above the most that is taken, ${withUnit(facts, 'greatest', path)}.`,
    cause: 'Is the decimal point or the unit another one?',
  }),
  'too-few': (facts) => ({
    wrong: `It is too short: at least ${text(facts, 'least')} needed.`,
    cause: 'Was a reading or a name left out?',
  }),
  'too-many': (facts) => ({
    wrong: `It is too long: at most ${text(facts, 'greatest')} taken.`,
    cause: 'Was a list pasted twice?',
  }),
  'not-whole': (facts) => ({
    wrong: `${text(facts, 'value')} is not a whole number.`,
    cause: 'This is counted, not measured.',
  }),
  'unknown-row': (facts) => ({ wrong: `“${text(facts, 'value')}” is in no table.`, cause: choices(facts) }),
  'no-such-head': (facts) => ({
    wrong: `${text(facts, 'head')} has no head for ${text(facts, 'thread')}.`,
    cause: `It is known for: ${text(facts, 'made')}.`,
  }),
  'no-such-washer': (facts) => ({
    wrong: `No plain washer is known for ${text(facts, 'thread')}.`,
    cause: 'Leave the washer out.',
  }),
  'clearance-below-screw': (facts) => ({
    wrong: `A clearance hole of ${lengthText(number(facts, 'value'))} does not let a screw of ${lengthText(number(facts, 'screw'))} through.`,
    cause: `The usual hole is ${lengthText(number(facts, 'medium'))}.`,
  }),
  'clearance-above-head': (facts) => ({
    wrong: `A clearance hole of ${lengthText(number(facts, 'value'))} lets the head of ${lengthText(number(facts, 'bearing'))} fall through.`,
    cause: 'Use a washer, or a smaller hole.',
  }),
  'layer-above-line': (facts) => ({
    wrong: `A layer of ${lengthText(number(facts, 'layerHeight'))} is higher than the line of ${lengthText(number(facts, 'lineWidth'))} is wide.`,
    cause: 'Are the two swapped?',
  }),
  'hole-prints-shut': (facts) => ({
    wrong: `A hole drawn at ${lengthText(number(facts, 'drawn'))} would print shut.`,
    cause: 'Is it the diameter, in millimetres?',
  }),
  'hole-beyond-boss': (facts) => ({
    wrong: `A bore of ${lengthText(number(facts, 'bore'))} leaves nothing of a boss of ${lengthText(number(facts, 'boss'))}.`,
    cause: 'Is one of the two a radius?',
  }),
  'hole-beyond-part': (facts) => ({
    wrong: `A hole ${lengthText(number(facts, 'depth'))} deep is deeper than the part under the face, ${lengthText(number(facts, 'thickness'))}.`,
    cause: 'For a hole that goes through give the height of the part.',
  }),
  'duplicate-id': (facts) => ({
    wrong: `“${text(facts, 'value')}” names two inserts of the drawer.`,
    cause: 'Give one of them another name.',
  }),
  'hole-looks-like-inches': (facts) => ({
    wrong: `${length(facts, 'value')} does not suit the other diameter.`,
    cause: `Was it read in inches? ${length(facts, 'inMillimetres')} would suit.`,
  }),
  'hole-looks-like-radius': (facts) => ({
    wrong: `${length(facts, 'value')} is about half of the other diameter.`,
    cause: `Is it a radius? The diameter would be ${length(facts, 'diameter')}.`,
  }),
  'hole-swapped': (facts) => ({
    wrong: `The hole is said to print larger than drawn, ${length(facts, 'measured')} for ${length(facts, 'drawn')}, where the others print smaller.`,
    cause: 'Were drawn and measured swapped?',
  }),
  'hole-error-implausible': (facts) => ({
    wrong: `A hole drawn at ${length(facts, 'drawn')} does not print to ${length(facts, 'measured')}.`,
    cause: 'Is it another hole, or a slip of a digit?',
  }),
  'no-such-printer': (facts) => ({
    wrong: `The joint’s printer, “${text(facts, 'value')}”, is not among the printers.`,
    cause: 'Was it taken out or renamed?',
  }),
  'no-such-insert': (facts) => ({
    wrong: `The chosen insert, “${text(facts, 'value')}”, is not in the drawer.`,
    cause: 'Was it taken out or renamed?',
  }),
  'seat-contradicts-side': (facts) => ({
    wrong: `An insert set from the ${text(facts, 'side') === 'far-side' ? 'far' : 'near'} side cannot have its part bear ${text(facts, 'seat') === 'far-side' ? 'on a far-side shoulder' : 'there'}.`,
    cause: 'Let the sizes decide, or set the insert from the other side.',
  }),
  'sleeve-not-wider': (facts) => ({
    wrong: `A spacer of ${lengthText(number(facts, 'value'))} has no wall round its hole of ${lengthText(number(facts, 'hole'))}.`,
    cause: 'Give its outside diameter.',
  }),
  'sleeve-under-countersunk': (facts) => ({
    wrong: `A countersunk head (${text(facts, 'head')}) finds no flat end of a spacer to press on.`,
    cause: 'Take a cap or button head, or leave the spacer out.',
  }),
  'twist-on-one-point': () => ({
    wrong: 'One screw cannot take a moment that turns the part round it.',
    cause: 'Add a second screw, or let the load act through the screw.',
  }),
  'tilt-without-arm': () => ({
    wrong:
      'The load tilts the part, and the screws have no arm against it: they lie in one line, or there is only one.',
    cause: 'Let the part turn about its edge, and give the distance to the edge.',
  }),
  'screw-beyond-edge': (facts) => ({
    wrong: `A screw ${lengthText(number(facts, 'screw'))} from the middle lies beyond the edge at ${lengthText(number(facts, 'edge'))}.`,
    cause: 'Give the distance from the middle of the screws to the edge of the part.',
  }),
  'looks-like-inches': insertFault('looks-like-inches'),
  'pilot-not-below-knurl': insertFault('pilot-not-below-knurl'),
  'length-and-knurl-swapped': insertFault('length-and-knurl-swapped'),
  'no-brass-left': insertFault('no-brass-left'),
  'knurl-too-wide': insertFault('knurl-too-wide'),
  'pilot-below-thread': insertFault('pilot-below-thread'),
  'no-bite': insertFault('no-bite'),
  'too-long': insertFault('too-long'),
  'too-short': insertFault('too-short'),
  'knurled-longer-than-insert': insertFault('knurled-longer-than-insert'),
} as const satisfies Record<RefusalCode, WordsOfCode>;

export const wordsOfRefusal = (refusal: Refusal): FaultWords =>
  WORDS[refusal.code](refusal.facts, refusal.path);

/** The likely cause of a refusal, or what to do about it. */
export const causeOfRefusal = (refusal: Refusal): string => wordsOfRefusal(refusal).cause;

/** What is wrong and its likely cause, for beside the field that it concerns. */
export function sentenceOfRefusal(refusal: Refusal): string {
  const { wrong, cause } = wordsOfRefusal(refusal);
  return `${wrong} ${cause}`;
}

/** The same with its place in front, for a list of all that was refused. */
export const lineOfRefusal = (refusal: Refusal): string =>
  `${placeOfRefusal(refusal)}: ${sentenceOfRefusal(refusal)}`;

export function placeOfRefusal(refusal: Refusal): string {
  const place = placeOfPath(refusal.path);
  return `${place.slice(0, 1).toUpperCase()}${place.slice(1)}`;
}
