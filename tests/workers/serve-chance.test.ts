import { describe, expect, test } from 'vitest';
import type { ChanceInput, FromWorker, Request } from '../../src/workers/protocol.ts';
import { serveChance } from '../../src/workers/serve-chance.ts';
import { givenJoint, theInsert } from '../support/joints.ts';
import { type FakePort, fakePort } from './line.ts';

const input: ChanceInput = {
  joint: givenJoint(),
  insert: theInsert(),
  torque: 640,
  samples: 60_000,
  seed: 5,
};
const request = (id: number, changes: Partial<ChanceInput> = {}): Request => ({
  kind: 'request',
  id,
  name: 'chance',
  input: { ...input, ...changes },
});

/** Lets everything that waits for a pause go on, until the worker has ended. */
const settled = async () => {
  for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setTimeout(resolve, 0));
};
const breath = () => new Promise<void>((resolve) => setTimeout(resolve, 0));
const ofKind = <Kind extends FromWorker['kind']>({ posted }: FakePort, kind: Kind) =>
  posted.filter((message): message is Extract<FromWorker, { kind: Kind }> => message.kind === kind);

function served(): FakePort {
  const port = fakePort();
  serveChance(port, breath);
  return port;
}

describe('serveChance', () => {
  test('says when it is ready, before anything else', () => {
    expect(served().posted).toEqual([{ kind: 'ready' }]);
  });
  test('tells its progress in rising shares that end at 1, then the answer', async () => {
    const port = served();
    port.send(request(3));
    await settled();
    const shares = ofKind(port, 'progress').map(({ share }) => share);
    expect(shares.length).toBeGreaterThan(1);
    expect(shares).toEqual([...shares].sort((one, other) => one - other));
    expect(shares.at(-1)).toBe(1);
    expect(port.posted.at(-1)).toMatchObject({
      kind: 'done',
      id: 3,
      output: { answer: { samples: 60_000 } },
    });
  });
  test('gives the same answer for the same seed, also beside another request', async () => {
    const port = served();
    port.send(request(1));
    port.send(request(2, { seed: 6 }));
    port.send(request(3));
    await settled();
    const outputOf = (id: number) => ofKind(port, 'done').find((message) => message.id === id)?.output;
    expect(outputOf(1)).toMatchObject({ kind: 'answered' });
    expect(outputOf(3)).toEqual(outputOf(1));
    expect(outputOf(2)).not.toEqual(outputOf(1));
  });
  test('answers the curve over torque', async () => {
    const port = served();
    port.send({
      kind: 'request',
      id: 9,
      name: 'chance-over-torque',
      input: { joint: input.joint, insert: input.insert, samples: 100, seed: 1, torques: [510, 230] },
    });
    await settled();
    expect(port.posted.at(-1)).toMatchObject({
      kind: 'done',
      id: 9,
      output: { kind: 'answered', answer: [{ torque: 230 }, { torque: 510 }] },
    });
  });
  test('stops between two chunks when it is told to cancel', async () => {
    const port = served();
    port.send(request(4));
    port.send({ kind: 'cancel', id: 4 });
    await settled();
    expect(ofKind(port, 'progress')).toHaveLength(1);
    expect(ofKind(port, 'done')).toEqual([]);
  });
  test('cancels only the request that was meant', async () => {
    const port = served();
    port.send(request(4));
    port.send(request(5));
    port.send({ kind: 'cancel', id: 4 });
    await settled();
    expect(ofKind(port, 'done').map(({ id }) => id)).toEqual([5]);
  });
  test('gives the stop of a joint that is not answered', async () => {
    const port = served();
    port.send(request(6, { joint: givenJoint({ use: 'lifting' }) }));
    await settled();
    expect(port.posted.at(-1)).toEqual({
      kind: 'done',
      id: 6,
      output: { kind: 'stopped', stop: { code: 'use-endangers-people', use: 'lifting' } },
    });
  });
  test('sends an error back as data and goes on serving', async () => {
    const port = served();
    const { host: _, ...broken } = input.joint;
    port.send(request(7, { joint: broken as ChanceInput['joint'] }));
    port.send(request(8, { samples: 10 }));
    await settled();
    const [failed] = ofKind(port, 'failed');
    expect(failed?.id).toBe(7);
    expect(failed?.message).toMatch(/material/);
    expect(ofKind(port, 'done').map(({ id }) => id)).toEqual([8]);
  });
});
