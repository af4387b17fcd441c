import type { HolesOfFile, HolesRequests } from './holes-requests.ts';
import type { WorkerLineOf } from './line.ts';
import { type Outcome, type RunOptions, workerClient } from './worker-client.ts';

/** Reads a file and finds the holes of its part. */
export type FindHolesOfFile = (file: Blob, options?: RunOptions) => Promise<Outcome<HolesOfFile>>;

/**
 * Asks a worker for the holes of files.
 *
 * @param startWorker - makes a worker that speaks the protocol
 * @returns the question that can be asked
 */
export function holesClient(startWorker: () => WorkerLineOf<HolesRequests>): FindHolesOfFile {
  const ask = workerClient<HolesRequests>(startWorker);
  return (file, options) => ask('holes-of-file', file, options);
}

/** The holes of a file, worked out beside the page. */
export const findHolesOfFile = holesClient(
  () => new Worker(new URL('./holes-worker.ts', import.meta.url), { type: 'module' }),
);
