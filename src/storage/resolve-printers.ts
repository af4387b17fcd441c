import type { Catalogue } from '../core/joint/catalogue.ts';
import type { JointDocument, PrinterRecord } from './document.ts';
import type { Faults } from './resolve.ts';

/**
 * The printer that the joint names, with every printer of the document checked: names given once, materials that are in
 * the tables. Absent where the joint names none.
 */
export function resolvePrinter(
  { printers, joint }: JointDocument,
  catalogue: Catalogue,
  faults: Faults,
): PrinterRecord | undefined {
  const seen = new Set<string>();
  for (const [index, { id, material }] of printers.entries()) {
    if (seen.has(id)) faults.add(`printers.${index}.id`, 'duplicate-id', { value: id });
    seen.add(id);
    if (!catalogue.hostMaterials.some((row) => row.id === material)) {
      const choices = catalogue.hostMaterials.map((row) => row.id).join(', ');
      faults.add(`printers.${index}.material`, 'unknown-row', { value: material, choices });
    }
  }
  if (joint.printer !== undefined && !seen.has(joint.printer)) {
    faults.add('joint.printer', 'no-such-printer', { value: joint.printer });
  }
  return printers.find(({ id }) => id === joint.printer);
}
