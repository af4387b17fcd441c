import { type ChanceClient, chanceClient } from '../../../../src/workers/chance-client.ts';
import { type FakeWorker, fakeWorker } from '../../../workers/line.ts';

/** A client with workers of the test, which answer only when they are told to. */
export function fakeClient(): ChanceClient & {
  readonly started: () => number;
  readonly worker: () => FakeWorker;
} {
  const workers: FakeWorker[] = [];
  const client = chanceClient(() => {
    const worker = fakeWorker();
    workers.push(worker);
    return worker;
  });
  const worker = () => {
    const last = workers.at(-1);
    if (last === undefined) throw new Error('no worker was started');
    return last;
  };
  return { ...client, started: () => workers.length, worker };
}
