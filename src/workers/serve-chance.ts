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
import type { Port } from './line.ts';
import type { Pause } from './pause.ts';
import type {
  ChanceInput,
  ChanceOverTorqueInput,
  FromWorker,
  Request,
  Requests,
  ToWorker,
} from './protocol.ts';
import { sentResult } from './sent-result.ts';
import { serve } from './serve.ts';

/** Joints drawn between two looks at the messages: some ten milliseconds. */
const CHUNK = 25_000;

/** Draws a number of joints more. */
type Draw = (count: number) => void;

/**
 * Answers requests for chances until the line closes; several may be under way at once.
 *
 * @param port - the line to whoever asks
 * @param pause - waits until messages that have arrived are handled
 */
export function serveChance(port: Port<FromWorker, ToWorker>, pause: Pause): void {
  serve<Requests>(port, pause, (request, report) =>
    outputOf(request, async (samples, draw) => {
      for (let drawn = 0; drawn < samples; ) {
        const count = Math.min(CHUNK, samples - drawn);
        draw(count);
        drawn += count;
        if (!(await report(drawn / samples))) return false;
      }
      return true;
    }),
  );
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
  return finished ? { kind: 'answered', answer: sentResult(chanceResult(model, counters)) } : undefined;
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
