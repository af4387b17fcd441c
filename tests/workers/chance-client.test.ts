import { describe, expect, test } from 'vitest';
import { chanceClient, type WorkerLine } from '../../src/workers/chance-client.ts';
import type { ChanceInput } from '../../src/workers/protocol.ts';
import { serveChance } from '../../src/workers/serve-chance.ts';
import { givenJoint, theInsert } from '../support/joints.ts';
import { type FakeWorker, fakePort, fakeWorker } from './line.ts';

const input: ChanceInput = { joint: givenJoint(), insert: theInsert(), torque: 640, samples: 70, seed: 5 };
const answer = { kind: 'stopped', stop: { code: 'use-endangers-people', use: 'lifting' } } as const;

function client() {
  const workers: FakeWorker[] = [];
  const asked = chanceClient(() => {
    const worker = fakeWorker();
    workers.push(worker);
    return worker;
  });
  /** The worker started last; none is a fault of the test. */
  const worker = () => {
    const last = workers.at(-1);
    if (last === undefined) throw new Error('no worker was started');
    return last;
  };
  return { ...asked, workers, worker };
}

describe('chanceClient', () => {
  test('starts no worker before the first request, and one for several', async () => {
    const { runChance, workers, worker } = client();
    expect(workers).toHaveLength(0);
    const [one, other] = [runChance(input), runChance({ ...input, seed: 6 })];
    expect(workers).toHaveLength(1);
    worker().say({ kind: 'ready' });
    worker().say({ kind: 'done', id: 2, output: answer });
    worker().say({ kind: 'failed', id: 1, message: 'of a sort' });
    expect(await one).toEqual({ kind: 'failed', code: 'calculation-failed', message: 'of a sort' });
    expect(await other).toEqual({ kind: 'done', output: answer });
  });
  test('keeps requests until the worker is ready, then sends them in order', () => {
    const { runChance, runChanceOverTorque, worker } = client();
    void runChance(input);
    void runChanceOverTorque({ ...input, torques: [300, 400] });
    expect(worker().sent).toEqual([]);
    worker().say({ kind: 'ready' });
    expect(
      worker().sent.map((message) => (message.kind === 'request' ? message.name : message.kind)),
    ).toEqual(['chance', 'chance-over-torque']);
  });
  test('passes progress on to the request that it belongs to', () => {
    const { runChance, worker } = client();
    const shares: [string, number][] = [];
    void runChance(input, { onProgress: (share) => shares.push(['first', share]) });
    void runChance(input, { onProgress: (share) => shares.push(['second', share]) });
    worker().say({ kind: 'ready' });
    worker().say({ kind: 'progress', id: 2, share: 0.4 });
    worker().say({ kind: 'progress', id: 1, share: 0.7 });
    expect(shares).toEqual([
      ['second', 0.4],
      ['first', 0.7],
    ]);
  });
  test('cancels a running request by a message and takes no notice of its answer', async () => {
    const { runChance, worker } = client();
    const abort = new AbortController();
    const outcome = runChance(input, { signal: abort.signal });
    worker().say({ kind: 'ready' });
    abort.abort();
    worker().say({ kind: 'done', id: 1, output: answer });
    expect(await outcome).toEqual({ kind: 'cancelled' });
    expect(worker().sent.at(-1)).toEqual({ kind: 'cancel', id: 1 });
  });
  test('takes a request that was not sent yet out of the queue', async () => {
    const { runChance, worker } = client();
    const abort = new AbortController();
    const outcome = runChance(input, { signal: abort.signal });
    abort.abort();
    expect(await outcome).toEqual({ kind: 'cancelled' });
    worker().say({ kind: 'ready' });
    expect(worker().sent).toEqual([]);
  });
  test('does not start a worker for a request that is cancelled before it is made', async () => {
    const { runChance, workers } = client();
    expect(await runChance(input, { signal: AbortSignal.abort() })).toEqual({ kind: 'cancelled' });
    expect(workers).toHaveLength(0);
  });
  test('reports a dead worker to all who wait, and starts a new one with the next request', async () => {
    const { runChance, workers, worker } = client();
    const waiting = [runChance(input), runChance(input)];
    const dead = worker();
    dead.die('out of memory');
    expect(await Promise.all(waiting)).toEqual([
      { kind: 'failed', code: 'worker-died', message: 'out of memory' },
      { kind: 'failed', code: 'worker-died', message: 'out of memory' },
    ]);
    expect(dead.terminated()).toBe(true);
    const next = runChance(input);
    expect(workers).toHaveLength(2);
    worker().say({ kind: 'ready' });
    worker().say({ kind: 'done', id: 3, output: answer });
    expect(await next).toEqual({ kind: 'done', output: answer });
  });
  test('gets a real answer over a line to the server', async () => {
    const { runChance } = chanceClient((): WorkerLine => {
      const worker = fakeWorker();
      const port = fakePort();
      const reply = port.posted.push.bind(port.posted);
      port.posted.push = (...messages) => {
        queueMicrotask(() => messages.forEach(worker.say));
        return reply(...messages);
      };
      queueMicrotask(() => serveChance(port, () => Promise.resolve()));
      return { ...worker, postMessage: (message) => queueMicrotask(() => port.send(message)) };
    });
    const outcome = await runChance(input);
    expect(outcome).toMatchObject({ kind: 'done', output: { kind: 'answered', answer: { samples: 70 } } });
  });
});

describe('chanceClient where no worker can be started', () => {
  test('tells so, and tries again with the next request', async () => {
    let tries = 0;
    const { runChance } = chanceClient((): WorkerLine => {
      tries += 1;
      throw new Error(`not allowed, try ${tries}`);
    });
    expect(await runChance(input)).toEqual({
      kind: 'failed',
      code: 'worker-died',
      message: 'not allowed, try 1',
    });
    expect(await runChance(input)).toMatchObject({ message: 'not allowed, try 2' });
  });
});
