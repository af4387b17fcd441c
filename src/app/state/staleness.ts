import type { JointDocument } from '../../storage/document.ts';
import { pathOfField, type Sheet } from './sheet.ts';

/** What on the page no longer answers what stands in the fields. */
export interface Staleness {
  /** The answers, the drawing and the questions of the insert that is shown. */
  readonly answers: boolean;
  /** The ranking, which every insert of the drawer has a part in. */
  readonly ranking: boolean;
  /** Paths of the fields that wait. */
  readonly waiting: readonly string[];
}

export const NOTHING_STALE: Staleness = { answers: false, ranking: false, waiting: [] };
/** Keys of the document that no number follows from. */
const IDLE = /^(name|scenario|drawer\.\d+\.(label|count))$/;
const DRAWER_INDEX = /^drawer\.(\d+)\./;

/** Which answers wait for a field to be put right. */
export function stalenessOf(sheet: Sheet, shownInsert: string | undefined): Staleness {
  const document = sheet.journal.present;
  const paths = [...sheet.pending.keys(), ...sheet.unread].map(pathOfField);
  const waiting = [...new Set(paths)].filter((path) => !IDLE.test(path));
  if (waiting.length === 0) return NOTHING_STALE;
  return {
    answers: waiting.some((path) => concerns(document, path, shownInsert)),
    ranking: true,
    waiting,
  };
}

function concerns(document: JointDocument, path: string, shownInsert: string | undefined): boolean {
  const index = DRAWER_INDEX.exec(path)?.[1];
  return index === undefined || document.drawer[Number(index)]?.id === shownInsert;
}
