import type { FromWorker, Port, Request, RequestName, Requests, ToWorker } from './protocol.ts';

/** A worker as far as the client needs it. */
export interface WorkerLine extends Port<ToWorker, FromWorker> {
  addEventListener(type: 'message', listener: (event: { readonly data: FromWorker }) => void): void;
  addEventListener(
    type: 'error' | 'messageerror',
    listener: (event: { readonly message?: string }) => void,
  ): void;
  terminate(): void;
}

type Output = Requests[RequestName]['output'];

/** What became of a request. Nothing is thrown: the page shows each of them. */
export type Outcome<Answer> =
  | { readonly kind: 'done'; readonly output: Answer }
  | { readonly kind: 'cancelled' }
  | {
      readonly kind: 'failed';
      readonly code: 'calculation-failed' | 'worker-died';
      readonly message: string;
    };

export interface RunOptions {
  /** Called with the share done, above 0 to 1. */
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal;
}

export type Run<Name extends RequestName> = (
  input: Requests[Name]['input'],
  options?: RunOptions,
) => Promise<Outcome<Requests[Name]['output']>>;

export interface ChanceClient {
  readonly runChance: Run<'chance'>;
  readonly runChanceOverTorque: Run<'chance-over-torque'>;
}

/** A request that waits for its answer. */
interface Waiting {
  readonly onProgress: RunOptions['onProgress'];
  readonly settle: (outcome: Outcome<Output>) => void;
}

/** A worker with the requests that it has, and those that wait until it is ready. */
interface Line {
  readonly worker: WorkerLine;
  ready: boolean;
  readonly unsent: Request[];
  readonly waiting: Map<number, Waiting>;
}

/**
 * Asks a worker for chances. It is started with the first request and serves until it dies; then every request that
 * waits is told so, and the next one starts a new worker.
 *
 * @param startWorker - makes a worker that speaks the protocol
 * @returns the questions that can be asked
 */
export function chanceClient(startWorker: () => WorkerLine): ChanceClient {
  let line: Line | undefined;
  let lastId = 0;

  function open(): Line {
    const opened: Line = { worker: startWorker(), ready: false, unsent: [], waiting: new Map() };
    const die = ({ message = '' }: { readonly message?: string }) => {
      if (line === opened) line = undefined;
      opened.worker.terminate();
      for (const { settle } of opened.waiting.values())
        settle({ kind: 'failed', code: 'worker-died', message });
      opened.waiting.clear();
    };
    opened.worker.addEventListener('message', ({ data }) => receive(opened, data));
    opened.worker.addEventListener('error', die);
    opened.worker.addEventListener('messageerror', die);
    return opened;
  }

  function ask(request: Request, { onProgress, signal }: RunOptions): Promise<Outcome<Output>> {
    if (signal?.aborted) return Promise.resolve({ kind: 'cancelled' });
    let asked: Line;
    try {
      asked = line ?? open();
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      return Promise.resolve({ kind: 'failed', code: 'worker-died', message });
    }
    line = asked;
    return new Promise((resolve) => {
      const cancel = () => withdraw(asked, request.id);
      signal?.addEventListener('abort', cancel, { once: true });
      const settle: Waiting['settle'] = (outcome) => {
        signal?.removeEventListener('abort', cancel);
        resolve(outcome);
      };
      asked.waiting.set(request.id, { onProgress, settle });
      if (asked.ready) asked.worker.postMessage(request);
      else asked.unsent.push(request);
    });
  }

  const nextId = () => {
    lastId += 1;
    return lastId;
  };

  return {
    // The worker answers under the request's id with the output that belongs to its name.
    runChance: (input, options = {}) =>
      ask({ kind: 'request', id: nextId(), name: 'chance', input }, options) as ReturnType<Run<'chance'>>,
    runChanceOverTorque: (input, options = {}) =>
      ask({ kind: 'request', id: nextId(), name: 'chance-over-torque', input }, options) as ReturnType<
        Run<'chance-over-torque'>
      >,
  };
}

function receive(line: Line, message: FromWorker): void {
  if (message.kind === 'ready') {
    line.ready = true;
    for (const request of line.unsent.splice(0)) line.worker.postMessage(request);
    return;
  }
  // Absent: it was cancelled, and the answer was already on its way.
  const waiting = line.waiting.get(message.id);
  if (waiting === undefined) return;
  if (message.kind === 'progress') {
    waiting.onProgress?.(message.share);
    return;
  }
  line.waiting.delete(message.id);
  waiting.settle(
    message.kind === 'done'
      ? { kind: 'done', output: message.output }
      : { kind: 'failed', code: 'calculation-failed', message: message.message },
  );
}

/** Takes a request back: out of the queue, or by a message to the worker that has it. */
function withdraw(line: Line, id: number): void {
  const waiting = line.waiting.get(id);
  if (waiting === undefined) return;
  line.waiting.delete(id);
  const unsent = line.unsent.findIndex((request) => request.id === id);
  if (unsent >= 0) line.unsent.splice(unsent, 1);
  else line.worker.postMessage({ kind: 'cancel', id });
  waiting.settle({ kind: 'cancelled' });
}

const client = chanceClient(
  () => new Worker(new URL('./chance-worker.ts', import.meta.url), { type: 'module' }),
);

/** Chances at one setting of the tool. */
export const { runChance, runChanceOverTorque } = client;
