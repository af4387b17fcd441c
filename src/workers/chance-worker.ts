import type { FromWorker, Port, ToWorker } from './protocol.ts';
import { serveChance } from './serve-chance.ts';

const { port1, port2 } = new MessageChannel();
const waiting: (() => void)[] = [];
port1.onmessage = () => waiting.shift()?.();

/** A message to oneself comes after those that have arrived, and sooner than the shortest timer. */
const pause = () =>
  new Promise<void>((resolve) => {
    waiting.push(resolve);
    port2.postMessage(undefined);
  });

// The compiler takes `self` for a page's; a worker's has as much in common with it as the line needs.
serveChance(self satisfies Port<FromWorker, ToWorker>, pause);
