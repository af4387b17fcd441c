import type { PrinterRecord } from '../../src/storage/document.ts';

/** A printer of a document, without a reading unless told otherwise; its pins go by 0.02 mm. */
export const printerRecord = (changes: Partial<PrinterRecord> = {}): PrinterRecord => ({
  id: 'attic',
  name: 'Attic printer',
  material: 'petg',
  nozzle_mm: 0.4,
  layerHeight_mm: 0.2,
  gaugeCompensation: 'none',
  jawFlat_mm: 0.4,
  gaugeStep_mm: 0.02,
  holes: [],
  ...changes,
});
