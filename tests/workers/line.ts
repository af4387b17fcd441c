import type { WorkerLine } from '../../src/workers/chance-client.ts';
import type { Port } from '../../src/workers/line.ts';
import type { FromWorker, ToWorker } from '../../src/workers/protocol.ts';

type Listener<Event> = (event: Event) => void;

/** A worker of the test: what it was sent, and a way to let it speak. */
export interface FakeWorker extends WorkerLine {
  readonly sent: ToWorker[];
  readonly terminated: () => boolean;
  readonly say: (message: FromWorker) => void;
  readonly die: (message: string) => void;
}

export function fakeWorker(): FakeWorker {
  const sent: ToWorker[] = [];
  const listeners = {
    message: [] as Listener<{ readonly data: FromWorker }>[],
    error: [] as Listener<{ readonly message?: string }>[],
    messageerror: [] as Listener<{ readonly message?: string }>[],
  };
  let terminated = false;
  function addEventListener(type: 'message', listener: Listener<{ readonly data: FromWorker }>): void;
  function addEventListener(
    type: 'error' | 'messageerror',
    listener: Listener<{ readonly message?: string }>,
  ): void;
  function addEventListener(type: keyof typeof listeners, listener: Listener<never>): void {
    (listeners[type] as Listener<never>[]).push(listener);
  }
  return {
    sent,
    terminated: () => terminated,
    // What cannot be cloned cannot be sent to a real worker either.
    postMessage: (message) => sent.push(structuredClone(message)),
    addEventListener,
    terminate: () => {
      terminated = true;
    },
    say: (data) => {
      for (const listener of listeners.message) listener({ data });
    },
    die: (message) => {
      for (const listener of listeners.error) listener({ message });
    },
  };
}

/** The worker's end of a line: what it has posted, and a way to send to it. */
export interface FakePort extends Port<FromWorker, ToWorker> {
  readonly posted: FromWorker[];
  readonly send: (message: ToWorker) => void;
}

export function fakePort(): FakePort {
  const posted: FromWorker[] = [];
  const listeners: Listener<{ readonly data: ToWorker }>[] = [];
  return {
    posted,
    postMessage: (message) => posted.push(structuredClone(message)),
    addEventListener: (_type, listener) => listeners.push(listener),
    send: (data) => {
      for (const listener of listeners) listener({ data: structuredClone(data) });
    },
  };
}
