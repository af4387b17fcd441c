import type { Port } from './line.ts';
import { messagePause } from './pause.ts';
import type { FromWorker, ToWorker } from './protocol.ts';
import { serveChance } from './serve-chance.ts';

// The compiler takes `self` for a page's; a worker's has as much in common with it as the line needs.
serveChance(self satisfies Port<FromWorker, ToWorker>, messagePause());
