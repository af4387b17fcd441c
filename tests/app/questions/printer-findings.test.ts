import { describe, expect, test } from 'vitest';
import { checkHoles, mostlyLarger } from '../../../src/app/questions/my-printer/hole-check.ts';
import { addedPrinter, withoutPrinter } from '../../../src/app/questions/my-printer/printer-edits.ts';
import { nextHoleOf } from '../../../src/app/questions/my-printer/printer-findings.ts';
import { withEdits } from '../../../src/app/state/edit.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import { admit } from '../../../src/core/joint/stop.ts';
import type { HoleReadingRecord, PrinterRecord } from '../../../src/storage/document.ts';
import { openDocument } from '../../../src/storage/open-document.ts';
import { withEvidence } from '../../../src/storage/with-evidence.ts';
import { jointDocument, resolved } from '../../support/joints.ts';
import { printerRecord } from '../../support/printers.ts';
import { expectRelative } from '../../support/published.ts';

const pin = (drawn_mm: number, measured: number, axis: 'vertical' | 'horizontal' = 'vertical') =>
  ({ drawn_mm, measured_mm: [measured], instrument: 'pin-gauge', axis }) satisfies HoleReadingRecord;
const PRINTER = printerRecord({
  holes: [pin(3.5, 3.33), pin(4.1, 3.9, 'horizontal'), pin(4.7, 4.61), pin(5.3, 5.24)],
});

function nextFor(printer: PrinterRecord | undefined) {
  const document = {
    ...jointDocument(printer ? { printer: printer.id } : {}),
    printers: printer ? [printer] : [],
  };
  const found = resolved(document);
  const { joint } = withEvidence(document, found);
  const admission = admit(joint);
  const [insert] = found.drawer;
  if (admission.kind === 'stopped' || !insert) throw new Error('not answered');
  const assessment = assess(admission.joint, insert);
  return {
    next: nextHoleOf(document.caliper.permissibleError_mm, printer, { joint, assessment }),
    assessment,
  };
}

describe('nextHoleOf', () => {
  test('begins with the scatter and the chance that the hole’s own table says', () => {
    for (const printer of [undefined, PRINTER]) {
      const { next, assessment } = nextFor(printer);
      const { chance, standardDeviation } = assessment.hole.window;
      expectRelative(next.chance?.before.value ?? 0, chance.value, 1e-9);
      expectRelative(next.deviationBefore.value, standardDeviation.value, 1e-9);
    }
  });
  test('gains less on a printer that was read, and never makes it worse', () => {
    const [without, read] = [nextFor(undefined).next, nextFor(PRINTER).next];
    const gain = (next: typeof without) => next.deviationBefore.value - next.deviationAfter.value;
    expect(gain(read)).toBeGreaterThan(0);
    expect(gain(without)).toBeGreaterThan(gain(read));
    expect(Math.abs(without.drawn.value - 4.55)).toBeLessThanOrEqual(1.5);
  });
});

describe('checkHoles', () => {
  test('names new holes by their place among them, and old ones beside which they look wrong', () => {
    const document = jointDocument();
    const { ofNew, ofOld } = checkHoles(document, PRINTER, [pin(4.4, 4.2), pin(4.4, 2.1), pin(4.2, 4)]);
    expect([...ofNew].map(([place, { code }]) => [place, code])).toEqual([[1, 'hole-looks-like-radius']]);
    expect(ofOld).toEqual([]);
    const large = printerRecord({ holes: [pin(4, 4.15)] });
    const beside = checkHoles(document, large, [pin(4.1, 3.95), pin(4.4, 4.25), pin(4.7, 4.55)]);
    expect(beside.ofNew.size).toBe(0);
    expect(beside.ofOld.map(({ place, refusal }) => [place, refusal.code])).toEqual([[0, 'hole-swapped']]);
  });
});

describe('mostlyLarger', () => {
  test('asks from three holes on, when more than half print larger by 0.05 mm', () => {
    expect(mostlyLarger([pin(4, 4.2), pin(4.1, 4.3)])).toBe(false);
    expect(mostlyLarger([pin(4, 4.2), pin(4.1, 4.3), pin(4.2, 4.1)])).toBe(true);
    expect(mostlyLarger([pin(4, 4.04), pin(4.1, 4.13), pin(4.2, 4.24)])).toBe(false);
  });
});

describe('addedPrinter and withoutPrinter', () => {
  test('make documents that the door takes, with a name no other printer has', () => {
    const begin = { ...jointDocument(), printers: [printerRecord({ id: 'printer-4' })] };
    const opened = openDocument(withEdits(begin, addedPrinter(begin)));
    if (opened.kind === 'refused') throw new Error(JSON.stringify(opened.refusals));
    expect(opened.document.printers.map(({ id }) => id)).toEqual(['printer-4', 'printer-5']);
    expect(opened.document.joint.printer).toBe('printer-5');
    const without = openDocument(withEdits(opened.document, withoutPrinter(opened.document, 'printer-5')));
    expect(without).toMatchObject({ kind: 'opened', document: { printers: [{ id: 'printer-4' }] } });
    expect(without.kind === 'opened' && 'printer' in without.document.joint).toBe(false);
  });
  test('leave the joint’s printer when another one is taken out', () => {
    const document = {
      ...jointDocument({ printer: 'attic' }),
      printers: [PRINTER, printerRecord({ id: 'cellar' })],
    };
    expect(withoutPrinter(document, 'cellar').map(({ path }) => path)).toEqual(['printers']);
  });
});
