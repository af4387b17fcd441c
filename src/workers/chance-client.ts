import type { WorkerLineOf } from './line.ts';
import type { RequestName, Requests } from './protocol.ts';
import { type Outcome, type RunOptions, workerClient } from './worker-client.ts';

export type WorkerLine = WorkerLineOf<Requests>;

export type Run<Name extends RequestName> = (
  input: Requests[Name]['input'],
  options?: RunOptions,
) => Promise<Outcome<Requests[Name]['output']>>;

export interface ChanceClient {
  readonly runChance: Run<'chance'>;
  readonly runChanceOverTorque: Run<'chance-over-torque'>;
}

/**
 * Asks a worker for chances.
 *
 * @param startWorker - makes a worker that speaks the protocol
 * @returns the questions that can be asked
 */
export function chanceClient(startWorker: () => WorkerLine): ChanceClient {
  const ask = workerClient<Requests>(startWorker);
  return {
    runChance: (input, options) => ask('chance', input, options),
    runChanceOverTorque: (input, options) => ask('chance-over-torque', input, options),
  };
}

const client = chanceClient(
  () => new Worker(new URL('./chance-worker.ts', import.meta.url), { type: 'module' }),
);

/** Chances at one setting of the tool. */
export const { runChance, runChanceOverTorque } = client;
