import type { BadReading, ReadingsRefusal } from '../quantity/parse-readings.ts';
import { alone, type FieldFacts, refusalWords, type Words } from './words.ts';

function badReadingWords({ position, text, refusal }: BadReading, facts: FieldFacts): string {
  return `Reading ${position}, “${text}”: ${refusalWords(refusal, { ...facts, text }).message}`;
}

/** At most so many bad readings are described; the others are counted. */
const READINGS_DESCRIBED = 3;

/** Why readings are not taken; every bad one by its place. */
export function readingsWords(refusal: ReadingsRefusal, facts: FieldFacts): Words {
  switch (refusal.code) {
    case 'empty':
      return alone('The field is empty. Type the readings with a blank or a semicolon between: 4.24; 4.26.');
    case 'too-long':
      return alone(`The text is longer than ${refusal.limit} characters.`);
    case 'too-few':
      return alone(`At least ${refusal.least} readings are needed; here are ${refusal.count}.`);
    case 'too-many':
      return alone(`At most ${refusal.most} readings fit; here are ${refusal.count}.`);
    case 'bad-readings': {
      const described = refusal.bad.slice(0, READINGS_DESCRIBED).map((bad) => badReadingWords(bad, facts));
      const others = refusal.bad.slice(READINGS_DESCRIBED).map((bad) => bad.position);
      if (others.length > 0) described.push(`Not taken either: ${others.join(', ')}.`);
      return alone(described.join(' '));
    }
  }
}
