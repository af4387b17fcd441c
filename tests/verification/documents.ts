import { nomenclatureText } from './nomenclature-text.ts';
import { verificationText } from './verification-text.ts';

/** The documents that are written from the rows, by their path from the project's folder. */
export const DOCUMENTS: Readonly<Record<string, (root: string) => string>> = {
  'docs/verification.md': verificationText,
  'docs/nomenclature.md': nomenclatureText,
};
