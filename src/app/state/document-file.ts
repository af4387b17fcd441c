import type { JointDocument } from '../../storage/document.ts';

/** The text of the file that a joint is saved as. */
export const documentText = (document: JointDocument): string =>
  `${JSON.stringify(document, undefined, 2)}\n`;

/** A name for the file that every system takes: sensor-lid.joint.json. */
export function documentFileName(name: string): string {
  const stem = name
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `${stem === '' ? 'joint' : stem}.joint.json`;
}

/** Hands a text to the browser as a file to save. */
export const saveText = (text: string, fileName: string, type = 'application/json'): void =>
  saveFile(new Blob([text], { type }), fileName);

/** Hands a file to the browser to save. */
export function saveFile(file: Blob, fileName: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // Some browsers read the file only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
