import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { recommend } from '../../src/core/recommend/recommend.ts';
import { CATALOGUE } from '../../src/data/catalogue.ts';
import { openDocumentText } from '../../src/storage/open-document.ts';
import { resolveDocument } from '../../src/storage/resolve.ts';

const docs = join(import.meta.dirname, '..', '..', 'docs');
const exampleText = readFileSync(join(docs, 'example-joint.json'), 'utf8');
const guide = readFileSync(join(docs, 'document.md'), 'utf8');

/** First cells of the guide's table. */
const tableKeys = [...guide.matchAll(/^\|\s*`([^`]+)`\s*\|/gm)].map(([, key]) => key);

/** Every key of a value as the guide writes it: joint.host.axis, drawer[].id. */
function keysOf(value: unknown, path = ''): string[] {
  if (Array.isArray(value)) {
    return value.some((one) => typeof one === 'object')
      ? [...new Set(value.flatMap((one) => keysOf(one, `${path}[]`)))]
      : [path];
  }
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, inner]) => keysOf(inner, path === '' ? key : `${path}.${key}`));
}

function exampleDocument() {
  const opened = openDocumentText(exampleText);
  if (opened.kind === 'refused') throw new Error(JSON.stringify(opened.refusals));
  return opened.document;
}

describe('the example of the guide', () => {
  test('opens, resolves and is answered for the insert it names', () => {
    const resolved = resolveDocument(exampleDocument(), CATALOGUE);
    if (resolved.kind === 'refused') throw new Error(JSON.stringify(resolved.refusals));
    const recommendation = recommend(resolved.value.joint, resolved.value.drawer);
    if (recommendation.kind === 'stopped') throw new Error(recommendation.stop.code);
    const ids = recommendation.ranked.map((one) => one.assessment.insertId);
    expect(ids).toContain(resolved.value.chosenInsert);
  });
  test('uses every optional key, so that it is complete', () => {
    const keys = keysOf(exampleDocument());
    for (const key of [
      'joint.clamped.sleeve.outsideDiameter_mm',
      'joint.host.bossDiameter_mm',
      'joint.screw.length_mm',
      'drawer[].knurledLength_mm',
    ]) {
      expect(keys).toContain(key);
    }
  });
});

describe('the guide to the document', () => {
  test.each(keysOf(JSON.parse(exampleText)))('describes %s in its table', (key) => {
    expect(tableKeys).toContain(key);
  });
  test.each([
    ['host materials', CATALOGUE.hostMaterials.map((row) => row.id)],
    ['threads', CATALOGUE.threads.map((row) => row.id)],
    ['heads', CATALOGUE.heads.map((row) => row.standard)],
    ['property classes', CATALOGUE.propertyClasses.map((row) => row.id)],
    ['friction conditions', CATALOGUE.frictionConditions.map((row) => row.id)],
    ['infill patterns', CATALOGUE.infillPatterns.map((row) => row.id)],
    ['clamped metals', CATALOGUE.clampedMaterials.filter((row) => row.kind === 'metal').map((row) => row.id)],
  ])('lists all %s by id', (_name, ids) => {
    for (const id of ids) expect(guide).toContain(`\`${id}\``);
  });
});
