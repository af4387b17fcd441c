import type { Admit } from './admitted.ts';

let admit: Admit | undefined;

/** Loads the door; the page begins with a document that is known to be sound and does not wait for it. */
export async function openDoor(): Promise<Admit> {
  admit ??= (await import('./admit.ts')).admit;
  return admit;
}

/** The door, once it is there. */
export const openedDoor = (): Admit | undefined => admit;
