import { describe, expect, test } from 'vitest';
import { leverReading } from '../../../src/core/evidence/lever-reading.ts';
import { given } from '../../support/joints.ts';

const load = given('F_pl', 1200, 'N');

describe('leverReading', () => {
  test('divides the load by the lever ratio', () => {
    const found = leverReading(load, { leverRatio: 6, scaleLimit: 300 });
    expect(found).toMatchObject({ kind: 'reading', reading: { value: 200, unit: 'N', formula: 'F_pl/i_L' } });
  });
  test('reaches the end of the scale and not beyond', () => {
    expect(leverReading(load, { leverRatio: 6, scaleLimit: 200 }).kind).toBe('reading');
    expect(leverReading(load, { leverRatio: 6, scaleLimit: 199.999 }).kind).toBe('refused');
  });
  test('says which lever ratio the scale needs', () => {
    const found = leverReading(load, { leverRatio: 2, scaleLimit: 240 });
    expect(found).toMatchObject({
      code: 'scale-too-small',
      reading: { value: 600 },
      leverRatio: { value: 5 },
    });
    if (found.kind === 'reading') throw new Error('not refused');
    expect(leverReading(load, { leverRatio: found.leverRatio.value, scaleLimit: 240 }).kind).toBe('reading');
  });
});
