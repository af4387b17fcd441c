import { CLAMP_LEVERS } from './clamp-levers.ts';
import { INSERT_LEVERS } from './insert-levers.ts';
import type { Lever } from './lever.ts';
import { LOAD_LEVERS } from './load-levers.ts';
import { PRINT_LEVERS } from './print-levers.ts';

/** Every input that the sensitivity moves and that a remedy may use, the simplest remedies first. */
export const LEVERS: readonly Lever[] = [...PRINT_LEVERS, ...CLAMP_LEVERS, ...INSERT_LEVERS, ...LOAD_LEVERS];
