import type { FromWorkerOf, Port, RequestOf, RequestsOf, ToWorkerOf } from './line.ts';
import type { Pause } from './pause.ts';

/** Tells the share done, above 0 to 1, and lets messages in; false where the request was taken back. */
export type Report = (share: number) => Promise<boolean>;

/** Works a request out; undefined where it was taken back. */
export type Answer<Requests extends RequestsOf<keyof Requests>> = (
  request: RequestOf<Requests>,
  report: Report,
) => Promise<Requests[keyof Requests]['output'] | undefined>;

/**
 * Answers the requests of a line until it closes; several may be under way at once.
 *
 * @param port - the line to whoever asks
 * @param pause - waits until messages that have arrived are handled
 * @param answer - works one request out
 */
export function serve<Requests extends RequestsOf<keyof Requests>>(
  port: Port<FromWorkerOf<Requests>, ToWorkerOf<Requests>>,
  pause: Pause,
  answer: Answer<Requests>,
): void {
  const underWay = new Set<number>();

  async function respond(request: RequestOf<Requests>): Promise<void> {
    const { id } = request;
    underWay.add(id);
    try {
      const output = await answer(request, async (share) => {
        port.postMessage({ kind: 'progress', id, share });
        await pause();
        return underWay.has(id);
      });
      if (output !== undefined) port.postMessage({ kind: 'done', id, output });
    } catch (error) {
      port.postMessage({
        kind: 'failed',
        id,
        message: error instanceof Error ? error.message : String(error),
      });
    } finally {
      underWay.delete(id);
    }
  }

  port.addEventListener('message', ({ data }) => {
    if (data.kind === 'cancel') underWay.delete(data.id);
    else void respond(data);
  });
  port.postMessage({ kind: 'ready' });
}
