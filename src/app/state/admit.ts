import { CATALOGUE } from '../../data/catalogue.ts';
import { openDocument } from '../../storage/open-document.ts';
import { resolveDocument } from '../../storage/resolve.ts';
import { printerRefusals } from '../../storage/with-printer.ts';
import type { Admit } from './admitted.ts';

/** The one door of the sheet: format and ranges first, then the rows it names and how its parts fit. */
export const admit: Admit = (candidate) => {
  const opened = openDocument(candidate);
  if (opened.kind === 'refused') return opened;
  const resolved = resolveDocument(opened.document, CATALOGUE);
  if (resolved.kind === 'refused') return resolved;
  const refusals = printerRefusals(opened.document);
  return refusals.length > 0
    ? { kind: 'refused', refusals }
    : { kind: 'admitted', document: opened.document, resolved: resolved.value };
};
