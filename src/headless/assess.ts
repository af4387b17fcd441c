import { readFileSync } from 'node:fs';
import { recommend } from '../core/recommend/recommend.ts';
import { CATALOGUE } from '../data/catalogue.ts';
import { openDocumentText } from '../storage/open-document.ts';
import type { Refusal } from '../storage/refusal.ts';
import { resolveDocument } from '../storage/resolve.ts';
import { withEvidence } from '../storage/with-evidence.ts';
import { printerRefusals } from '../storage/with-printer.ts';
import { sentenceOfRefusal } from '../wording/refusals.ts';
import { reportOf } from './report.ts';

const USAGE = 'Usage: npm run -s assess -- FILE.json (a joint document; "-" reads it from standard input)';

function fail(lines: readonly string[]): void {
  process.stderr.write(`${lines.join('\n')}\n`);
  process.exitCode = 1;
}

/** Names the key first: a script's author looks for it in the file. */
const lineOf = (refusal: Refusal): string =>
  `${refusal.path === '' ? 'document' : refusal.path}: ${sentenceOfRefusal(refusal)}`;

function textOf(file: string): string | undefined {
  try {
    return readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch (error) {
    fail([`${file}: cannot be read (${error instanceof Error ? error.message : 'unknown reason'}).`]);
    return undefined;
  }
}

function main([file, ...others]: readonly string[]): void {
  if (file === undefined || others.length > 0) {
    fail([USAGE]);
    return;
  }
  const text = textOf(file);
  if (text === undefined) return;
  const opened = openDocumentText(text);
  if (opened.kind === 'refused') {
    fail(opened.refusals.map(lineOf));
    return;
  }
  const resolved = resolveDocument(opened.document, CATALOGUE);
  if (resolved.kind === 'refused') {
    fail(resolved.refusals.map(lineOf));
    return;
  }
  const unsound = printerRefusals(opened.document);
  if (unsound.length > 0) {
    fail(unsound.map(lineOf));
    return;
  }
  const { drawer, chosenInsert } = resolved.value;
  const { joint, evidence } = withEvidence(opened.document, resolved.value);
  const report = reportOf({
    name: opened.document.name,
    joint,
    recommendation: recommend(joint, drawer),
    drawer,
    ...(evidence ? { evidence } : {}),
    ...(chosenInsert === undefined ? {} : { chosenInsert }),
  });
  process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
}

main(process.argv.slice(2));
