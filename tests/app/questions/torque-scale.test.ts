import { describe, expect, test } from 'vitest';
import {
  LABEL_GAP,
  type Label,
  labelAt,
  meet,
  rowsOf,
  thinned,
} from '../../../src/app/questions/how-tight/scale-labels.ts';
import { type ScaleInput, torqueScale } from '../../../src/app/questions/how-tight/torque-scale.ts';

const WIDTHS = [320, 358, 480, 700, 1030, 1280];
const SETTINGS = Array.from({ length: 60 }, (_, index) => 50 * (index + 1));
const CASES: readonly (Omit<ScaleInput, 'width'> & { readonly name: string })[] = [
  {
    name: 'a wide window',
    least: { torque: 220, text: 'closed above 0.22' },
    most: { torque: 710, text: '0.71 insert thread strips' },
    dial: { torque: 600, text: 'dial 0.60' },
    breaking: { torque: 1030, text: '1.03 screw may break' },
    settings: [250, 400, 600, 900],
  },
  {
    name: 'a narrow window, many settings',
    least: { torque: 230, text: 'closed above 0.23' },
    most: { torque: 255, text: '0.25 shoulder punched through' },
    dial: { torque: 250, text: 'dial 0.25' },
    breaking: { torque: 260, text: '0.26 screw may break' },
    settings: SETTINGS,
  },
  {
    name: 'no window',
    least: { torque: 402, text: 'closed above 0.40' },
    most: { torque: 129, text: '0.13 knurl shears' },
    settings: [250, 251, 252, 400],
  },
  {
    name: 'no pull: nothing holds it open',
    least: { torque: 0, text: 'closed above 0.00' },
    most: { torque: 8200, text: '8.20 part yields under the head' },
    dial: { torque: 8150, text: 'dial 8.15' },
    settings: [],
  },
];
const all = CASES.flatMap(({ name, ...input }) =>
  WIDTHS.map((width) => ({ name, width, input: { ...input, width } })),
);

const labelsOf = (input: ScaleInput): readonly Label[] => {
  const scale = torqueScale(input);
  return [
    scale.unit,
    ...[...scale.ticks, ...scale.ends, ...scale.settings, ...(scale.dial ? [scale.dial] : [])].flatMap(
      ({ label }) => label ?? [],
    ),
  ];
};

describe('torqueScale', () => {
  test.each(all)('lets no two labels meet: $name at $width px', ({ input }) => {
    const labels = labelsOf(input);
    for (const [index, one] of labels.entries()) {
      for (const other of labels.slice(index + 1)) {
        const sameLine = Math.abs(one.baseline - other.baseline) < Math.max(one.size, other.size);
        expect(sameLine && meet(one, other), `"${one.text}" and "${other.text}"`).toBe(false);
      }
    }
  });
  test.each(all)('keeps every label inside: $name at $width px', ({ input, width }) => {
    const { height } = torqueScale(input);
    for (const { left, width: own, baseline, size } of labelsOf(input)) {
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left + own).toBeLessThanOrEqual(width + 1e-9);
      expect(baseline - size).toBeGreaterThanOrEqual(-4);
      expect(baseline).toBeLessThanOrEqual(height);
    }
  });
  test.each(all)('is to scale: $name at $width px', ({ input }) => {
    const { ticks, ends, dial } = torqueScale(input);
    const [first, ...others] = ticks;
    const last = others.at(-1);
    if (first === undefined || last === undefined) throw new Error('a scale without ticks');
    const perTorque = (last.x - first.x) / (last.torque - first.torque);
    for (const { x, torque } of [...ticks, ...ends, ...(dial ? [dial] : [])]) {
      expect(Math.abs(x - first.x - perTorque * torque)).toBeLessThan(1e-6);
      expect(x).toBeLessThanOrEqual(last.x);
    }
  });
  test('names the dialled setting even among many', () => {
    const many = { ...CASES[1], width: 358 } as ScaleInput;
    const dialled = torqueScale(many).settings.find(({ torque }) => torque === 250);
    expect(dialled?.label?.text).toBe('0.25');
  });
  test('writes all figures of the scale with the decimals of its step', () => {
    for (const { input } of all) {
      const decimals = torqueScale(input).ticks.flatMap(({ label }) =>
        label ? [label.text.split('.')[1]?.length] : [],
      );
      expect(new Set(decimals).size).toBe(1);
    }
  });
  test('leaves out a breaking torque that the scale does not reach', () => {
    const far = {
      ...CASES[0],
      width: 1030,
      breaking: { torque: 9000, text: '9.00 screw may break' },
    } as ScaleInput;
    expect(torqueScale(far).ends).toHaveLength(2);
  });
});

describe('labels', () => {
  const label = (left: number, width: number): Label => ({
    text: 'x',
    left,
    width,
    baseline: 0,
    size: 16,
    anchor: 'start',
  });
  test('meet when closer than the gap', () => {
    expect(meet(label(0, 50), label(50 + LABEL_GAP - 1, 10))).toBe(true);
    expect(meet(label(0, 50), label(50 + LABEL_GAP, 10))).toBe(false);
  });
  test('go to the next row only where they meet', () => {
    expect(rowsOf([label(0, 50), label(40, 50), label(100, 20), label(45, 10)])).toEqual([0, 1, 0, 2]);
  });
  test('are thinned, the wanted one kept', () => {
    const labels = [label(0, 20), label(20, 20), label(60, 20)];
    expect([...thinned(labels, ({ left }) => left === 20)].map(({ left }) => left)).toEqual([20, 60]);
  });
  test('change sides where there is no room', () => {
    const place = { size: 16, baseline: 0, within: 200 };
    expect(labelAt('0.71 strips', { ...place, x: 190, side: 'after' }).anchor).toBe('end');
    expect(labelAt('0.71 strips', { ...place, x: 20, side: 'after' }).anchor).toBe('start');
    expect(labelAt('closed', { ...place, x: 10, side: 'before' }).anchor).toBe('start');
  });
});
