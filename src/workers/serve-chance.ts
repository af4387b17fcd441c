import { chanceModel } from '../core/chance/chance-model.ts';
import {
  chancesOverTorque,
  emptyTorqueCounters,
  sampleOverTorque,
} from '../core/chance/chance-over-torque.ts';
import { chanceResult } from '../core/chance/chance-result.ts';
import { seededGenerator } from '../core/chance/generator.ts';
import { emptyCounters, sampleChance } from '../core/chance/sample-chance.ts';
import { admit } from '../core/joint/stop.ts';
import type {
  ChanceInput,
  ChanceOverTorqueInput,
  FromWorker,
  Port,
  Request,
  Requests,
  ToWorker,
} from './protocol.ts';

/** Joints drawn between two looks at the messages: some ten milliseconds. */
const CHUNK = 25_000;

/** Draws a number of joints more. */
type Draw = (count: number) => void;

/** How the worker lets messages in. */
export type Pause = () => Promise<void>;

/**
 * Answers the requests of a line until it closes; several may be under way at once.
 *
 * @param port - the line to whoever asks
 * @param pause - waits until messages that have arrived are handled
 */
export function serveChance(port: Port<FromWorker, ToWorker>, pause: Pause): void {
  const underWay = new Set<number>();

  async function drawAll(id: number, samples: number, draw: Draw): Promise<boolean> {
    for (let drawn = 0; drawn < samples; ) {
      const count = Math.min(CHUNK, samples - drawn);
      draw(count);
      drawn += count;
      port.postMessage({ kind: 'progress', id, share: drawn / samples });
      await pause();
      if (!underWay.has(id)) return false;
    }
    return true;
  }

  async function answer(request: Request): Promise<void> {
    const { id } = request;
    underWay.add(id);
    try {
      const drawing: Draws = (samples, draw) => drawAll(id, samples, draw);
      const output = await outputOf(request, drawing);
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
    else void answer(data);
  });
  port.postMessage({ kind: 'ready' });
}

/** Draws all joints in chunks; false where it was cancelled. */
type Draws = (samples: number, draw: Draw) => Promise<boolean>;

/** The output of a request; undefined where it was cancelled. */
function outputOf(
  request: Request,
  draws: Draws,
): Promise<Requests[typeof request.name]['output'] | undefined> {
  switch (request.name) {
    case 'chance':
      return chance(request.input, draws);
    case 'chance-over-torque':
      return overTorque(request.input, draws);
  }
}

async function chance(
  { joint, insert, torque, samples, seed }: ChanceInput,
  draws: Draws,
): Promise<Requests['chance']['output'] | undefined> {
  const admission = admit(joint);
  if (admission.kind === 'stopped') return admission;
  const model = chanceModel(admission.joint, insert, torque);
  const generator = seededGenerator(seed);
  const counters = emptyCounters(model);
  const finished = await draws(samples, (count) => sampleChance(model, generator, count, counters));
  return finished ? { kind: 'answered', answer: chanceResult(model, counters) } : undefined;
}

async function overTorque(
  { joint, insert, torques, samples, seed }: ChanceOverTorqueInput,
  draws: Draws,
): Promise<Requests['chance-over-torque']['output'] | undefined> {
  const admission = admit(joint);
  if (admission.kind === 'stopped') return admission;
  const [first = 0] = torques;
  const model = chanceModel(admission.joint, insert, first);
  const generator = seededGenerator(seed);
  const counters = emptyTorqueCounters(model, torques);
  const finished = await draws(samples, (count) => sampleOverTorque(model, generator, count, counters));
  return finished ? { kind: 'answered', answer: chancesOverTorque(counters) } : undefined;
}
