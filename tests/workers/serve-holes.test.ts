import { describe, expect, test } from 'vitest';
import { holesClient } from '../../src/workers/holes-client.ts';
import type { HolesRequests } from '../../src/workers/holes-requests.ts';
import type { FromWorkerOf, ToWorkerOf, WorkerLineOf } from '../../src/workers/line.ts';
import { serveHoles } from '../../src/workers/serve-holes.ts';
import { blind, drilledPlate, through } from '../support/drilled-plate.ts';
import { plainModel, stlBinary, threeMf } from '../support/solid-files.ts';

type Sent = ToWorkerOf<HolesRequests>;
type Listener<Event> = (event: Event) => void;
type Answered = FromWorkerOf<HolesRequests>;

const plate = drilledPlate([through(4.3, 24), blind(5.2, 6.1, 31)]);
const breath = () => new Promise<void>((resolve) => setTimeout(resolve, 0));

/** A line within the test: what the worker posts comes to whoever asks, and is kept. */
function lineToServer() {
  const posted: Answered[] = [];
  const listeners: Listener<{ readonly data: Answered }>[] = [];
  let toServer: (event: { readonly data: Sent }) => void = () => undefined;
  function addEventListener(type: 'message', listener: Listener<{ readonly data: Answered }>): void;
  function addEventListener(
    type: 'error' | 'messageerror',
    listener: Listener<{ readonly message?: string }>,
  ): void;
  function addEventListener(type: string, listener: Listener<never>): void {
    if (type === 'message') listeners.push(listener as Listener<{ readonly data: Answered }>);
  }
  const start = (): WorkerLineOf<HolesRequests> => {
    queueMicrotask(() =>
      serveHoles(
        {
          postMessage: (message) => {
            const data = structuredClone(message);
            posted.push(data);
            for (const listener of listeners) listener({ data });
          },
          addEventListener: (_type, listener) => {
            toServer = listener;
          },
        },
        breath,
      ),
    );
    return {
      postMessage: (message) => toServer({ data: message }),
      addEventListener,
      terminate: () => undefined,
    };
  };
  return { find: holesClient(start), posted };
}

describe('the worker for holes', () => {
  test.each([
    ['stl-binary', stlBinary(plate)],
    ['three-mf', threeMf(plainModel(plate))],
  ])('finds the holes of a file, %s', async (format, bytes) => {
    const { find } = lineToServer();
    const outcome = await find(new Blob([bytes]));
    expect(outcome).toMatchObject({
      kind: 'done',
      output: { kind: 'found', format, extent: 40, triangles: plate.triangles.length / 3, notices: [] },
    });
    if (outcome.kind !== 'done' || outcome.output.kind !== 'found') return;
    const { holes, total } = outcome.output.found;
    expect(total).toBe(2);
    expect(holes.map(({ facets, ends }) => [facets, ends.far])).toEqual([
      [24, 'open'],
      [31, 'closed'],
    ]);
  });
  test('tells shares that rise, within 0 and 1', async () => {
    const { find } = lineToServer();
    const shares: number[] = [];
    await find(new Blob([threeMf(plainModel(plate))]), { onProgress: (share) => shares.push(share) });
    expect(shares.length).toBeGreaterThan(4);
    expect(shares).toEqual([...shares].sort((one, other) => one - other));
    expect(shares.at(-1)).toBeLessThanOrEqual(1);
  });
  test('gives the reason where a file is not read', async () => {
    const { find } = lineToServer();
    expect(await find(new Blob(['Dear all']))).toEqual({
      kind: 'done',
      output: { kind: 'refused', refusal: { code: 'not-a-solid' } },
    });
  });
  test('refuses a file beyond the limit without taking it in', async () => {
    const { find } = lineToServer();
    const huge = Object.defineProperty(new Blob(['solid']), 'size', { value: 2e9 });
    expect(await find(huge)).toMatchObject({
      output: { kind: 'refused', refusal: { code: 'file-too-large', bytes: 2e9, limit: 1e8 } },
    });
  });
  test.each([
    ['stl-binary', stlBinary(plate)],
    ['three-mf', threeMf(plainModel(plate))],
  ])('stops between two steps when it is told to, %s', async (_format, bytes) => {
    const { find, posted } = lineToServer();
    const abort = new AbortController();
    const outcome = await find(new Blob([bytes]), {
      signal: abort.signal,
      onProgress: () => abort.abort(),
    });
    await breath();
    await breath();
    expect(outcome).toEqual({ kind: 'cancelled' });
    expect(posted.map(({ kind }) => kind)).toEqual(['ready', 'progress']);
  });
  test('sends an error back as data', async () => {
    const { find } = lineToServer();
    const broken = Object.defineProperty(new Blob(['solid']), 'arrayBuffer', {
      value: () => Promise.reject(new Error('the file is gone')),
    });
    expect(await find(broken)).toEqual({
      kind: 'failed',
      code: 'calculation-failed',
      message: 'the file is gone',
    });
  });
});
