import { describe, expect, test } from 'vitest';
import { drawnForFacets } from '../../src/core/holes/facets.ts';
import { assess } from '../../src/core/joint/assess.ts';
import { noticesOf } from '../../src/core/joint/notices.ts';
import { admit } from '../../src/core/joint/stop.ts';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { HoleReadingRecord, JointDocument, PrinterRecord } from '../../src/storage/document.ts';
import { resolveDocument } from '../../src/storage/resolve.ts';
import { withEvidence } from '../../src/storage/with-evidence.ts';
import { printerRefusals } from '../../src/storage/with-printer.ts';
import { type Changes, given, jointDocument } from '../support/joints.ts';
import { expectRelative } from '../support/published.ts';

const hole = (
  drawn: number,
  measured: number,
  changes: Partial<HoleReadingRecord> = {},
): HoleReadingRecord => ({
  drawn_mm: drawn,
  measured_mm: [measured],
  instrument: 'pin-gauge',
  axis: 'vertical',
  ...changes,
});
/** A printer that closes holes by about half of what is assumed of an unknown one. */
const HOLES = [hole(3.5, 3.33), hole(4.1, 3.98), hole(4.7, 4.61), hole(5.3, 5.24)];

const withHoles = (
  holes: readonly HoleReadingRecord[],
  printer: Partial<PrinterRecord> = {},
  changes: Changes = {},
): JointDocument => ({
  ...jointDocument({ printer: 'attic', ...changes }),
  printers: [
    {
      id: 'attic',
      name: 'Attic printer',
      material: 'petg',
      nozzle_mm: 0.4,
      layerHeight_mm: 0.2,
      gaugeCompensation: 'none',
      jawFlat_mm: 0.4,
      gaugeStep_mm: 0.02,
      holes: [...holes],
      ...printer,
    },
  ],
});

function answeredIn(document: JointDocument) {
  const resolved = resolveDocument(document, CATALOGUE);
  if (resolved.kind === 'refused') throw new Error(JSON.stringify(resolved.refusals));
  const admission = admit(withEvidence(document, resolved.value).joint);
  const [insert] = resolved.value.drawer;
  if (admission.kind === 'stopped' || !insert) throw new Error('not answered');
  return { joint: admission.joint, insert, assessment: assess(admission.joint, insert) };
}
const assessedIn = (document: JointDocument) => answeredIn(document).assessment;
const drawnIn = (document: JointDocument): number => assessedIn(document).hole.drawn.value;
const codesIn = (document: JointDocument) => {
  const { joint, insert, assessment } = answeredIn(document);
  return noticesOf(joint, insert, assessment).map(({ code }) => code);
};
const FINE: Changes = { holes: { step_mm: 0.01 } };

describe('withPrinter', () => {
  test('draws a smaller hole for a printer that closes them less, and counts it as measured', () => {
    expect(drawnIn(withHoles(HOLES, {}, FINE))).toBeLessThan(drawnIn(jointDocument(FINE)));
    expect(assessedIn(withHoles(HOLES)).hole.drawn).toMatchObject({
      standing: 'measured',
      source: 'your-measurement',
    });
  });
  test('raises the chance that the bore fits', () => {
    const chance = (document: JointDocument) => assessedIn(document).hole.window.chance.value;
    expect(chance(withHoles(HOLES))).toBeGreaterThan(chance(jointDocument()));
  });
  test('without a reading, or with readings of the other axis alone, is the unknown printer', () => {
    const lying = HOLES.map((one) => ({ ...one, axis: 'horizontal' as const }));
    for (const document of [withHoles([], {}, FINE), withHoles(lying, {}, FINE)]) {
      expect(assessedIn(document).hole).toEqual(assessedIn(jointDocument(FINE)).hole);
    }
    expect(drawnIn(withHoles(lying, {}, { ...FINE, host: { axis: 'across-build' } }))).toBeLessThan(
      drawnIn(jointDocument({ ...FINE, host: { axis: 'across-build' } })),
    );
  });
  test('never compensates twice: drawn larger, or by the slicer, or what the slicer leaves', () => {
    const inSlicer: Changes = { holes: { step_mm: 0.01, compensation: 'in-slicer' } };
    const bore = assessedIn(jointDocument(FINE)).hole.boreAsPrinted.value;
    // The slicer takes the error: the bore itself is drawn.
    expectRelative(drawnIn(withHoles(HOLES, {}, inSlicer)), Math.round(100 * bore) / 100);
    // The gauge shows what the slicer leaves: that much is drawn for.
    expect(drawnIn(withHoles(HOLES, { gaugeCompensation: 'slicer' }, inSlicer))).toBe(
      drawnIn(withHoles(HOLES, {}, FINE)),
    );
    // The gauge was compensated and the joint is not: its readings do not apply.
    const useless = withHoles(HOLES, { gaugeCompensation: 'slicer' }, FINE);
    expect(drawnIn(useless)).toBe(drawnIn(jointDocument(FINE)));
    expect(codesIn(useless)).toContain('gauge-was-compensated');
  });
  test('says where the printer was read otherwise than the part is printed', () => {
    expect(codesIn(withHoles(HOLES, { material: 'pla' }))).toContain('printer-of-other-material');
    expect(codesIn(withHoles(HOLES, { layerHeight_mm: 0.12 }))).toContain('printer-of-other-layers');
    expect(codesIn(withHoles(HOLES.slice(0, 2)))).toContain('few-holes-read');
    expect(codesIn(withHoles([hole(8.1, 8.02), hole(8.6, 8.54), hole(9.2, 9.11)]))).toContain(
      'hole-outside-fit-range',
    );
    expect(codesIn(withHoles(HOLES))).not.toContain('few-holes-read');
  });
});

describe('the polygon that leaves the CAD program', () => {
  test('is drawn larger by 1/cos(π/N), and printed to the same bore', () => {
    const circle = assessedIn(jointDocument(FINE)).hole;
    const twelve = assessedIn(jointDocument({ holes: { step_mm: 0.01, facets: 12 } })).hole;
    const wanted = drawnForFacets(given('D_CAD', circle.drawn.value, 'mm'), 12).value;
    expect(Math.abs(twelve.drawn.value - wanted)).toBeLessThanOrEqual(0.0101);
    expect(Math.abs(twelve.window.expected.value - circle.window.expected.value)).toBeLessThan(0.011);
  });
});

describe('printerRefusals', () => {
  const refused = (holes: readonly HoleReadingRecord[]) =>
    printerRefusals(withHoles(holes)).map(({ path, code }) => [path, code]);
  test('finds nothing wrong with sound readings', () => {
    expect(refused(HOLES)).toEqual([]);
  });
  test.each<[string, HoleReadingRecord, string, string]>([
    ['a radius', hole(4.1, 1.95), 'measured_mm', 'hole-looks-like-radius'],
    ['inches', hole(4.1, 0.157), 'measured_mm', 'hole-looks-like-inches'],
    ['another hole', hole(4.1, 6.2), 'measured_mm', 'hole-error-implausible'],
    ['both swapped', hole(3.55, 3.7), 'measured_mm', 'hole-swapped'],
  ])('names %s at its place, also among those of the other axis', (_, wrong, key, code) => {
    const lying = hole(5, 4.7, { axis: 'horizontal' });
    expect(refused([lying, ...HOLES, wrong])).toEqual([[`printers.0.holes.5.${key}`, code]]);
  });
});
