import type { JointDocument } from '../../storage/document.ts';

/** Where the joint of the sheet is kept on this device. */
export const KEPT_KEY = 'knurlwright joint';

/** Whether something is kept; false where the browser does not say. */
export function isSomethingKept(storage: () => Storage): boolean {
  try {
    return storage().getItem(KEPT_KEY) !== null;
  } catch {
    return false;
  }
}

/** Keeps the joint for the next visit; false where the browser does not take it. */
export function keepJoint(document: JointDocument, storage: () => Storage): boolean {
  try {
    storage().setItem(KEPT_KEY, JSON.stringify(document));
    return true;
  } catch {
    return false;
  }
}
