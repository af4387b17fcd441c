import { describe, expect, test } from 'vitest';
import type { Refusal, RefusalCode } from '../../src/storage/refusal.ts';
import {
  causeOfRefusal,
  lineOfRefusal,
  placeOfRefusal,
  sentenceOfRefusal,
} from '../../src/wording/refusals.ts';
import { expectSentence } from './expect-sentence.ts';

/** One refusal of each code with the facts that the door gives, and a part of the sentence that must be there. */
const CASES = {
  'not-json': [{ reason: 'Unexpected token' }, 'Unexpected token'],
  'too-large': [{ characters: 5_000_000, greatest: 4_000_000 }, '5,000,000'],
  'not-ours': [{ wanted: 'knurlwright-joint' }, 'knurlwright-joint'],
  'newer-version': [{ version: 9, known: 1 }, 'version 9'],
  missing: [{ choices: 'plain, none' }, 'plain, none'],
  'unknown-key': [{}, 'not known'],
  'wrong-kind': [{ value: 'five', wanted: 'number' }, 'a number'],
  'not-a-choice': [{ value: 'wood', choices: 'pla, petg' }, '“wood”'],
  'below-limit': [{ value: '-3', least: 0 }, '−3'],
  'above-limit': [{ value: '99', greatest: 60 }, '60'],
  'too-few': [{ least: 1 }, '1'],
  'too-many': [{ greatest: 50 }, '50'],
  'not-whole': [{ value: '2.5' }, '2.5'],
  'unknown-row': [{ value: 'M3.2', choices: 'M3, M4' }, 'M3, M4'],
  'no-such-head': [{ head: 'ISO 7380-1', thread: 'M2.5', made: 'M3, M4' }, 'M2.5'],
  'no-such-washer': [{ thread: 'M2.5' }, 'M2.5'],
  'clearance-below-screw': [{ value: 2.9, screw: 3, medium: 3.4 }, '3.4'],
  'clearance-above-head': [{ value: 5.9, bearing: 5.07 }, '5.07'],
  'layer-above-line': [{ layerHeight: 0.6, lineWidth: 0.45 }, '0.45'],
  'hole-prints-shut': [{ drawn: 0.3 }, '0.3'],
  'hole-beyond-boss': [{ bore: 9.12, boss: 8.8 }, '8.8'],
  'hole-beyond-part': [{ depth: 12.4, thickness: 11.3 }, '11.3'],
  'duplicate-id': [{ value: 'a' }, '“a”'],
  'no-such-insert': [{ value: 'b' }, '“b”'],
  'hole-looks-like-inches': [{ value: 0.17, inMillimetres: 4.318 }, '4.32'],
  'hole-looks-like-radius': [{ value: 2.1, diameter: 4.2 }, '4.2'],
  'hole-swapped': [{ drawn: 3.74, measured: 4, others: -0.26 }, '3.74'],
  'hole-error-implausible': [{ drawn: 4.5, measured: 6.1, error: 1.6, limit: 0.8 }, '6.1'],
  'no-such-printer': [{ value: 'attic' }, '“attic”'],
  'seat-contradicts-side': [{ seat: 'far-side', side: 'near-side' }, 'far-side shoulder'],
  'sleeve-not-wider': [{ value: 3.3, hole: 3.4 }, '3.3'],
  'twist-on-one-point': [{ moment: 900 }, 'second screw'],
  'sleeve-under-countersunk': [{ head: 'ISO 10642' }, 'ISO 10642'],
  'tilt-without-arm': [{ axis: 'x', moment: 800 }, 'edge'],
  'screw-beyond-edge': [{ edge: 12, screw: 17 }, '17'],
  'looks-like-inches': [{ feature: 'length', value: 0.226, inMillimetres: 5.74 }, '5.74'],
  'pilot-not-below-knurl': [{ pilotDiameter: 4.25, knurlDiameter: 4.1 }, 'swapped'],
  'length-and-knurl-swapped': [{ knurlDiameter: 3.5, length: 4.6 }, '4.6'],
  'no-brass-left': [{ knurlDiameter: 3.5, least: 3.6 }, '3.6'],
  'knurl-too-wide': [{ knurlDiameter: 12, greatest: 9.6 }, '9.6'],
  'pilot-below-thread': [{ pilotDiameter: 2.9, threadDiameter: 3 }, '2.9'],
  'no-bite': [{ knurlDiameter: 4.6, bore: 4.65 }, '4.65'],
  'too-long': [{ length: 16, greatest: 15 }, '15'],
  'too-short': [{ length: 1.2, least: 1.5 }, '1.5'],
  'knurled-longer-than-insert': [{ knurledLength: 6, length: 5 }, '6.0'],
} as const satisfies Record<RefusalCode, readonly [Refusal['facts'], string]>;

const cases = Object.entries(CASES).map(([code, [facts, part]]) => ({
  refusal: { path: 'drawer.0.length_mm', code: code as RefusalCode, facts },
  code,
  part,
}));

describe('sentenceOfRefusal', () => {
  test.each(cases)('says what is wrong and the likely cause of $code', ({ refusal, part }) => {
    const sentence = sentenceOfRefusal(refusal);
    expectSentence(sentence);
    expect(sentence).toContain(part);
    expect(sentence.endsWith(causeOfRefusal(refusal))).toBe(true);
    expect(causeOfRefusal(refusal).length).toBeGreaterThan(10);
  });
  test('gives a limit in the unit of its key', () => {
    const at = (path: string): Refusal => ({
      path,
      code: 'above-limit',
      facts: { value: '90', greatest: 60 },
    });
    expect(sentenceOfRefusal(at('joint.tool.settings_Nm.0'))).toContain('60\u00a0N·m');
    expect(sentenceOfRefusal(at('joint.loads.pull_N'))).toContain('60\u00a0N,'.replace(',', '.'));
    expect(sentenceOfRefusal(at('joint.host.wall.count'))).toContain('taken, 60.');
  });
});

describe('placeOfRefusal', () => {
  test.each([
    ['drawer.2.length_mm.0', 'Insert 3 of the drawer, length, reading 1'],
    ['joint.host.wall.lineWidth_mm', 'Printed part, wall, line width'],
    ['joint.tool.settings_Nm.1', 'Tool, settings, setting 2'],
    ['joint', 'Joint'],
    ['', 'The document'],
    ['joint.colour', '“colour”'],
    ['drawer', 'The drawer'],
  ])('calls %s %s', (path, words) => {
    expect(placeOfRefusal({ path, code: 'missing', facts: {} })).toBe(words);
  });
  test('stands in front of the sentence in a list', () => {
    expect(lineOfRefusal({ path: 'joint.gap_mm', code: 'missing', facts: {} })).toMatch(
      /^Gap: It is missing\./,
    );
  });
});
