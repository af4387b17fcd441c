import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import type { JointDocument, PrinterRecord } from '../../src/storage/document.ts';
import { resolveDocument } from '../../src/storage/resolve.ts';
import { jointDocument } from '../support/joints.ts';

const PRINTER: PrinterRecord = {
  id: 'attic',
  name: 'Attic printer, PETG',
  material: 'petg',
  nozzle_mm: 0.4,
  layerHeight_mm: 0.2,
  gaugeCompensation: 'none',
  jawFlat_mm: 0.4,
  gaugeStep_mm: 0.1,
  holes: [],
};

const faultsOf = (document: JointDocument) => {
  const resolved = resolveDocument(document, CATALOGUE);
  return resolved.kind === 'refused' ? resolved.refusals : [];
};
const withPrinters = (printers: readonly PrinterRecord[], printer?: string): JointDocument => ({
  ...jointDocument(printer === undefined ? {} : { printer }),
  printers: [...printers],
});

describe('resolvePrinter', () => {
  test('takes a joint without a printer, and one whose printer is there', () => {
    expect(faultsOf(withPrinters([]))).toEqual([]);
    expect(faultsOf(withPrinters([PRINTER], 'attic'))).toEqual([]);
  });
  test('refuses a printer that is not there', () => {
    expect(faultsOf(withPrinters([PRINTER], 'cellar'))).toEqual([
      { path: 'joint.printer', code: 'no-such-printer', facts: { value: 'cellar' } },
    ]);
  });
  test('refuses a name given twice and a material that no table has', () => {
    const faults = faultsOf(withPrinters([PRINTER, { ...PRINTER, material: 'chalk' }], 'attic'));
    expect(faults.map(({ path, code }) => [path, code])).toEqual([
      ['printers.1.id', 'duplicate-id'],
      ['printers.1.material', 'unknown-row'],
    ]);
  });
});
