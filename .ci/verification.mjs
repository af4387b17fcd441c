// Writes the documents that come from the rows of tests/verification: docs/verification.md and docs/nomenclature.md.
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { importTypescript } from './run-typescript.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const { DOCUMENTS } = /** @type {{ DOCUMENTS: Record<string, (root: string) => string> }} */ (
  await importTypescript('tests/verification/documents.ts')
);

for (const [path, textOf] of Object.entries(DOCUMENTS)) {
  writeFileSync(join(root, path), textOf(root));
  console.log(`written: ${path}`);
}
