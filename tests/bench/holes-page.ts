import { findHolesOfFile } from '../../src/workers/holes-client.ts';

/** Reads the file at an address and has its holes found by the worker: how many, and the time without the fetching. */
async function holesAt(address: string): Promise<{ readonly total: number; readonly milliseconds: number }> {
  const file = await (await fetch(address)).blob();
  const begin = performance.now();
  const outcome = await findHolesOfFile(file);
  const milliseconds = performance.now() - begin;
  if (outcome.kind !== 'done' || outcome.output.kind !== 'found') throw new Error(JSON.stringify(outcome));
  return { total: outcome.output.found.total, milliseconds };
}

Reflect.set(globalThis, 'holesAt', holesAt);
