import { describe, expect, test } from 'vitest';
import { calibrateHoles } from '../../src/core/holes/calibrate-holes.ts';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { HoleReadingRecord } from '../../src/storage/document.ts';
import { calibrationAlong } from '../../src/storage/printer-calibration.ts';
import { printerRecord } from '../support/printers.ts';
import { expectRelative } from '../support/published.ts';

const hole = (
  drawn_mm: number,
  measured: number,
  changes: Partial<HoleReadingRecord> = {},
): HoleReadingRecord => ({
  drawn_mm,
  measured_mm: [measured],
  instrument: 'caliper-jaws',
  axis: 'vertical',
  ...changes,
});
const PRINTER = printerRecord({
  holes: [
    hole(3.5, 3.33),
    hole(4.1, 3.9, { axis: 'horizontal', instrument: 'pin-gauge' }),
    hole(4.7, 4.61, { facets: 16 }),
  ],
});
const FROM = { prior: CATALOGUE.uncalibratedHoles, permissibleError: 0.03 };

describe('calibrationAlong', () => {
  test('keeps the axes apart and knows the place of each hole in the list', () => {
    expect(calibrationAlong('vertical', PRINTER, FROM)).toMatchObject({ axis: 'vertical', places: [0, 2] });
    expect(calibrationAlong('horizontal', PRINTER, FROM).places).toEqual([1]);
  });
  test('reads with the printer’s own jaws, pins and corners, and the caliper of the document', () => {
    const [round, polygon] = calibrationAlong('vertical', PRINTER, FROM).calibration.points;
    expectRelative(round?.bore.estimate.value ?? 0, Math.hypot(3.33, 0.4), 1e-12);
    expectRelative(polygon?.drawn ?? 0, 4.7 * Math.cos(Math.PI / 16), 1e-12);
    const [pin] = calibrationAlong('horizontal', PRINTER, FROM).calibration.points;
    expectRelative(pin?.bore.estimate.value ?? 0, 3.9 + 0.02 / 2, 1e-12);
    const worse = calibrationAlong('vertical', PRINTER, { ...FROM, permissibleError: 0.09 });
    expect(worse.calibration.points[0]?.standardUncertainty).toBeGreaterThan(round?.standardUncertainty ?? 1);
  });
  test('without a printer is what is assumed of every one', () => {
    const { calibration } = calibrationAlong('vertical', undefined, FROM);
    expect(calibration).toEqual(calibrateHoles(FROM.prior, []));
  });
  test('is the same object for the same readings, and another one for any other', () => {
    const one = calibrationAlong('vertical', PRINTER, FROM);
    expect(calibrationAlong('vertical', structuredClone(PRINTER), FROM)).toBe(one);
    expect(calibrationAlong('vertical', { ...PRINTER, jawFlat_mm: 0.5 }, FROM)).not.toBe(one);
    for (let at = 0; at < 20; at += 1) {
      calibrationAlong('vertical', { ...PRINTER, jawFlat_mm: at / 20 }, FROM);
    }
    expect(calibrationAlong('vertical', PRINTER, FROM)).toEqual(one);
  });
});
