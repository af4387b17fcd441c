import { describe, expect, test } from 'vitest';
import { differencesOf, type Made } from '../../src/core/bench/made-alike.ts';
import {
  type Growth,
  modelPowerOf,
  type StrengthFit,
  strengthBand,
  strengthFit,
} from '../../src/core/bench/strength-fit.ts';
import { PUT_OVER } from '../../src/core/bench/strength-points.ts';
import { plainText } from '../../src/wording/sentence.ts';
import {
  sentenceOfGrowth,
  sentenceOfNoFit,
  sentenceOfTwoSizes,
  slopeText,
} from '../../src/wording/strength-fit.ts';
import { derivationsWithin, meaningOf, meaningOfEntry } from '../../src/wording/symbols.ts';
import {
  nameOfWay,
  sentenceOfDifferences,
  sentenceOfVaried,
  spanText,
  textOfMade,
} from '../../src/wording/ways.ts';
import { benchTest } from '../support/bench-tests.ts';

const NAMES = { printer: (id: string) => `the ${id}` };
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('textOfMade', () => {
  test.each<[Made, string]>([
    [{ of: 'batch' }, 'as usual'],
    [{ of: 'batch', name: 'wet filament' }, 'wet filament'],
    [{ of: 'setting', setting: 'hammered' }, 'hammered in'],
    [{ of: 'bore', bore: { least: 4.4, greatest: 4.4 } }, '4.40 mm'],
    [{ of: 'bore', bore: { least: 4.4, greatest: 4.43 } }, '4.40 to 4.43 mm'],
    [{ of: 'bore' }, 'not written down'],
    [{ of: 'iron-temperature', temperature: 235 }, '235 °C'],
    [{ of: 'iron-temperature' }, 'not written down'],
    [{ of: 'setting-time', time: 4 / 3600 }, '4 s'],
    [{ of: 'setting-time', time: 2.5 / 3600 }, '2.5 s'],
    [{ of: 'setting-time' }, 'not written down'],
    [{ of: 'printer', printer: 'grey one' }, 'the grey one'],
    [{ of: 'printer' }, 'not written down'],
    [{ of: 'axis', axis: 'across-build' }, 'across the build'],
    [{ of: 'wall-lines', count: 5 }, '5'],
    [{ of: 'wall-lines' }, 'not written down'],
    [{ of: 'infill', share: 0.35 }, '35 %'],
    [{ of: 'infill' }, 'not written down'],
  ])('of %j is “%s”', (made, text) => {
    expect(plain(textOfMade(made, NAMES))).toBe(text);
  });
});

describe('nameOfWay', () => {
  test('tells the speed of a time by how deep the insert went: 5.3 mm in 4 s are 1.3 mm/s', () => {
    expect(plain(nameOfWay({ of: 'setting-time', time: 4 / 3600 }, NAMES, 5.3))).toBe('4 s, 1.3 mm/s');
  });
  test('says of a number what it is of', () => {
    expect(plain(nameOfWay({ of: 'bore', bore: { least: 4.2, greatest: 4.2 } }, NAMES, 5))).toBe(
      'bore 4.20 mm',
    );
    expect(plain(nameOfWay({ of: 'iron-temperature', temperature: 250 }, NAMES, 5))).toBe('iron at 250 °C');
  });
});

describe('sentenceOfDifferences', () => {
  const one = benchTest({ wallLines: 3, infill_percent: 20 });
  const other = benchTest({ wallLines: 5, infill_percent: 40 });
  test('names both sides, and what they may do', () => {
    expect(plain(sentenceOfDifferences(differencesOf([one], [other], []), NAMES))).toBe(
      'Different too: wall lines (3 against 5) and infill (20 % against 40 %). That may be what moves the ratio.',
    );
  });
  test('says what is mixed in both', () => {
    expect(plain(sentenceOfDifferences(differencesOf([one, other], [one, other], ['infill']), NAMES))).toBe(
      'Different too: wall lines (3 and 5 among both). That may be what moves the ratio.',
    );
  });
  test('is empty where nothing differs', () => {
    expect(sentenceOfDifferences([], NAMES)).toBe('');
    expect(sentenceOfVaried([], NAMES)).toBe('');
  });
  test('of coupons over their size is about one group', () => {
    expect(plain(sentenceOfVaried(differencesOf([one, other], [], ['infill']), NAMES))).toBe(
      'Different among these coupons too: wall lines (3 and 5).',
    );
  });
});

describe('spanText', () => {
  test('is one number where both ends read alike', () => {
    expect(plain(spanText({ least: 4.601, greatest: 4.603 }))).toBe('4.6 mm');
    expect(plain(spanText({ least: 4.6, greatest: 4.66 }))).toBe('4.6 to 4.66 mm');
  });
});

describe('a regression of strength', () => {
  const points = [
    [2.6, 5, 690],
    [3.6, 5, 1010],
    [6.1, 5, 1530],
    [3.6, 4.6, 880],
    [6.1, 4.6, 1390],
  ].map(([length = 0, diameter = 0, load = 0]) => ({ test: benchTest(), length, diameter, load }));
  const fits = Object.values(PUT_OVER)
    .map((over) => strengthFit(points, { over, kind: 'pull-out' }))
    .filter((found): found is Extract<StrengthFit, { kind: 'fitted' }> => found.kind === 'fitted');
  test('has a meaning for every symbol, down to what was given', () => {
    const numbers = fits.flatMap((found) => {
      const { expected, mean, next } = strengthBand(found, { length: 4, diameter: 4.8 });
      return [
        ...found.growth.flatMap(({ slope, power = slope, modelPower }) => [
          modelPower,
          slope.value,
          slope.low,
          power.value,
          power.high,
        ]),
        found.residual,
        ...(found.determination ? [found.determination] : []),
        expected,
        mean.low,
        mean.high,
        next.low,
        next.high,
      ];
    });
    expect(numbers.length).toBeGreaterThan(25);
    for (const one of numbers.flatMap((number) => [...derivationsWithin(number)])) {
      expect(meaningOf(one), one.symbol).not.toBe(one.symbol);
      for (const put of one.entries) expect(meaningOfEntry(put, one), put.symbol).not.toBe(put.symbol);
    }
  });
  test('is told beside the model’s law, whatever comes of it', () => {
    const [growth] = fits[0]?.growth ?? [];
    if (growth === undefined) throw new Error('no fit');
    const told = (one: Growth) => plainText(sentenceOfGrowth(one));
    expect(told({ ...growth, verdict: 'agrees' })).toMatch(
      /power 1\. Yours goes with power 0\.\d\d, which agrees\.$/,
    );
    expect(told({ ...growth, verdict: 'differs' })).toMatch(/does not agree: go by your coupons/);
    expect(told({ ...growth, verdict: 'open' })).toMatch(/do not even tell whether strength grows\.$/);
    expect(
      told({ of: 'diameter', slope: growth.slope, modelPower: modelPowerOf('diameter', 'torque-out') }),
    ).toBe('The model lets strength grow with the square of the knurl diameter: power 2.');
  });
  test('says of each refusal what would make one', () => {
    expect(sentenceOfNoFit({ kind: 'refused', code: 'too-few-points', points: 1, least: 3 }, 'length')).toBe(
      'One coupon gave way here; a regression takes three.',
    );
    expect(sentenceOfNoFit({ kind: 'refused', code: 'one-size', of: 'diameter' }, 'diameter')).toMatch(
      /one knurl diameter\. Test an insert of another one, or put strength over both\.$/,
    );
    expect(sentenceOfNoFit({ kind: 'refused', code: 'goes-with-the-other' }, 'both')).toMatch(
      /long and slim/,
    );
    expect(sentenceOfTwoSizes('length')).toMatch(/^Only two knurled lengths were tested/);
  });
  test('has slopes in newtons or newton metres for each millimetre', () => {
    expect(plain(slopeText(212.4, 'force'))).toBe('212 N/mm');
    expect(plain(slopeText(540, 'torque'))).toBe('0.54 N·m/mm');
  });
});
