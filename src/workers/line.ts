/** The requests of a worker by their names: what goes in, what comes out. All of it can be sent. */
export type RequestsOf<Names extends PropertyKey> = Readonly<
  Record<Names, { readonly input: unknown; readonly output: unknown }>
>;

/** A request as it is sent: name and input belong together. */
export type RequestOf<Requests extends RequestsOf<keyof Requests>> = {
  readonly [Name in keyof Requests]: {
    readonly kind: 'request';
    readonly id: number;
    readonly name: Name;
    readonly input: Requests[Name]['input'];
  };
}[keyof Requests];

export type ToWorkerOf<Requests extends RequestsOf<keyof Requests>> =
  | RequestOf<Requests>
  | { readonly kind: 'cancel'; readonly id: number };

export type FromWorkerOf<Requests extends RequestsOf<keyof Requests>> =
  | { readonly kind: 'ready' }
  | { readonly kind: 'progress'; readonly id: number; readonly share: number }
  | { readonly kind: 'done'; readonly id: number; readonly output: Requests[keyof Requests]['output'] }
  | { readonly kind: 'failed'; readonly id: number; readonly message: string };

/** One end of the line, as far as the protocol needs it. */
export interface Port<Sent, Received> {
  postMessage(message: Sent): void;
  addEventListener(type: 'message', listener: (event: { readonly data: Received }) => void): void;
}

/** A worker as far as whoever asks it needs it. */
export interface WorkerLineOf<Requests extends RequestsOf<keyof Requests>>
  extends Port<ToWorkerOf<Requests>, FromWorkerOf<Requests>> {
  addEventListener(
    type: 'message',
    listener: (event: { readonly data: FromWorkerOf<Requests> }) => void,
  ): void;
  addEventListener(
    type: 'error' | 'messageerror',
    listener: (event: { readonly message?: string }) => void,
  ): void;
  terminate(): void;
}
