import type { Refusal } from '../../storage/refusal.ts';

/** Refusals of one document that are read out; more would only repeat them. */
const GREATEST_LISTED = 8;

/** What is wrong with a document, one line a fault; the words are loaded when something is wrong. */
export async function refusalLines(refusals: readonly Refusal[]): Promise<readonly string[]> {
  const { lineOfRefusal } = await import('../../wording/refusals.ts');
  return refusals.slice(0, GREATEST_LISTED).map(lineOfRefusal);
}
