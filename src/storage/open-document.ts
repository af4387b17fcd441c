import { DOCUMENT_FORMAT, DOCUMENT_VERSION, documentSchema, type JointDocument } from './document.ts';
import { FIRST_VERSION, migrated } from './migrations/migrations.ts';
import type { Refusal } from './refusal.ts';
import { schemaRefusals } from './schema-refusals.ts';

/** Largest text taken for a document; a joint with a drawer of 5,000 inserts stays below. */
export const GREATEST_DOCUMENT_CHARACTERS = 4_000_000;

export type Opened =
  | { readonly kind: 'opened'; readonly document: JointDocument }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

const refused = (code: Refusal['code'], facts: Refusal['facts'] = {}, path = ''): Opened => ({
  kind: 'refused',
  refusals: [{ path, code, facts }],
});

/** Reads the text of a joint document; every fault is named with its place. */
export function openDocumentText(text: string): Opened {
  if (text.length > GREATEST_DOCUMENT_CHARACTERS) {
    return refused('too-large', { characters: text.length, greatest: GREATEST_DOCUMENT_CHARACTERS });
  }
  let input: unknown;
  try {
    input = JSON.parse(text);
  } catch (error) {
    return refused('not-json', { reason: error instanceof Error ? error.message : 'unreadable' });
  }
  return openDocument(input);
}

/** Carries a parsed value to the present version and checks it against the document's format, version and schema. */
export function openDocument(input: unknown): Opened {
  if (typeof input !== 'object' || input === null || Reflect.get(input, 'format') !== DOCUMENT_FORMAT) {
    return refused('not-ours', { wanted: DOCUMENT_FORMAT }, 'format');
  }
  const version: unknown = Reflect.get(input, 'version');
  if (typeof version === 'number' && version > DOCUMENT_VERSION) {
    return refused('newer-version', { version, known: DOCUMENT_VERSION }, 'version');
  }
  const current = isKnownVersion(version) ? migrated({ ...input }, version) : input;
  const parsed = documentSchema.safeParse(current);
  return parsed.success
    ? { kind: 'opened', document: parsed.data }
    : { kind: 'refused', refusals: schemaRefusals(parsed.error.issues, current) };
}

const isKnownVersion = (version: unknown): version is number =>
  typeof version === 'number' && Number.isInteger(version) && version >= FIRST_VERSION;
