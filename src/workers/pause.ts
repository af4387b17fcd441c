/** How a worker lets messages in. */
export type Pause = () => Promise<void>;

/** A way to let messages in: one to oneself comes after those that have arrived, and sooner than the shortest timer. */
export function messagePause(): Pause {
  const { port1, port2 } = new MessageChannel();
  const waiting: (() => void)[] = [];
  port1.onmessage = () => waiting.shift()?.();
  return () =>
    new Promise<void>((resolve) => {
      waiting.push(resolve);
      port2.postMessage(undefined);
    });
}
