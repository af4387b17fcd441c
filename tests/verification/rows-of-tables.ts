import type { PropertyClass, ScrewHead, Washer } from '../../src/core/screws/screw.ts';
import type { Thread } from '../../src/core/screws/thread.ts';
import { HEADS } from '../../src/data/heads.ts';
import { PROPERTY_CLASSES } from '../../src/data/property-classes.ts';
import { THREADS } from '../../src/data/threads.ts';
import { WASHERS } from '../../src/data/washers.ts';
import { theRow } from '../support/the-row.ts';

/** The rows that saved documents name, by what the trade calls them. */
export const threadNamed = (designation: string): Thread =>
  theRow(THREADS, (row) => row.designation === designation);

export const classNamed = (designation: string): PropertyClass =>
  theRow(PROPERTY_CLASSES, (row) => row.designation === designation);

export const headOf = (standard: string, thread: string): ScrewHead =>
  theRow(HEADS, (row) => row.standard === standard && row.thread === thread);

export const washerFor = (thread: string): Washer => theRow(WASHERS, (row) => row.thread === thread);
