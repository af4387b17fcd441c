import type { FromWorkerOf, RequestOf, RequestsOf, WorkerLineOf } from './line.ts';

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

/** Asks for one thing by its name. */
export type Ask<Requests extends RequestsOf<keyof Requests>> = <Name extends keyof Requests>(
  name: Name,
  input: Requests[Name]['input'],
  options?: RunOptions,
) => Promise<Outcome<Requests[Name]['output']>>;

/** A request that waits for its answer. */
interface Waiting<Output> {
  readonly onProgress: RunOptions['onProgress'];
  readonly settle: (outcome: Outcome<Output>) => void;
}

/** A worker with the requests that it has, and those that wait until it is ready. */
interface Line<Requests extends RequestsOf<keyof Requests>> {
  readonly worker: WorkerLineOf<Requests>;
  ready: boolean;
  readonly unsent: RequestOf<Requests>[];
  readonly waiting: Map<number, Waiting<Requests[keyof Requests]['output']>>;
}

/**
 * Asks a worker. It is started with the first request and serves until it dies; then every request that waits is told so,
 * and the next one starts a new worker.
 *
 * @param startWorker - makes a worker that speaks the protocol
 * @returns the way to ask
 */
export function workerClient<Requests extends RequestsOf<keyof Requests>>(
  startWorker: () => WorkerLineOf<Requests>,
): Ask<Requests> {
  type Output = Requests[keyof Requests]['output'];
  let line: Line<Requests> | undefined;
  let lastId = 0;

  function open(): Line<Requests> {
    const opened: Line<Requests> = { worker: startWorker(), ready: false, unsent: [], waiting: new Map() };
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

  function ask(request: RequestOf<Requests>, { onProgress, signal }: RunOptions): Promise<Outcome<Output>> {
    if (signal?.aborted) return Promise.resolve({ kind: 'cancelled' });
    let asked: Line<Requests>;
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
      const settle: Waiting<Output>['settle'] = (outcome) => {
        signal?.removeEventListener('abort', cancel);
        resolve(outcome);
      };
      asked.waiting.set(request.id, { onProgress, settle });
      if (asked.ready) asked.worker.postMessage(request);
      else asked.unsent.push(request);
    });
  }

  return (name, input, options = {}) => {
    lastId += 1;
    // The worker answers under the request's id with the output that belongs to its name.
    return ask({ kind: 'request', id: lastId, name, input }, options) as Promise<
      Outcome<Requests[typeof name]['output']>
    >;
  };
}

function receive<Requests extends RequestsOf<keyof Requests>>(
  line: Line<Requests>,
  message: FromWorkerOf<Requests>,
): void {
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
function withdraw<Requests extends RequestsOf<keyof Requests>>(line: Line<Requests>, id: number): void {
  const waiting = line.waiting.get(id);
  if (waiting === undefined) return;
  line.waiting.delete(id);
  const unsent = line.unsent.findIndex((request) => request.id === id);
  if (unsent >= 0) line.unsent.splice(unsent, 1);
  else line.worker.postMessage({ kind: 'cancel', id });
  waiting.settle({ kind: 'cancelled' });
}
