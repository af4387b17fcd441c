import type { withEvidence } from '../../storage/with-evidence.ts';
import type { Admit } from './admitted.ts';

interface Door {
  readonly admit: Admit;
  readonly withEvidence: typeof withEvidence;
}

let door: Door | undefined;

/** Loads the door; the page begins with a document that is known to be sound and does not wait for it. */
export async function openDoor(): Promise<Admit> {
  if (door === undefined) {
    const [{ admit }, evidence] = await Promise.all([
      import('./admit.ts'),
      import('../../storage/with-evidence.ts'),
    ]);
    door = { admit, withEvidence: evidence.withEvidence };
  }
  return door.admit;
}

/** The door, once it is there. */
export const openedDoor = (): Admit | undefined => door?.admit;

/** What reads tests comes with the door: a document with tests came through it, or is opened once it is there. */
export const openedEvidence = (): Door['withEvidence'] | undefined => door?.withEvidence;
