import type { ChanceClient } from '../../../workers/chance-client.ts';
import type { Outcome, RunOptions } from '../../../workers/worker-client.ts';
import type { Question, Sampled } from './sampling-state.ts';

/** Joints at the setting, and joints for the curve. */
export const SAMPLES = 1_000_000;
const SAMPLES_OF_CURVE = 200_000;
const ALL = SAMPLES + SAMPLES_OF_CURVE;

/** Asks for the chances at the setting, then for those over all settings, as one answer. */
export async function askSampling(
  client: ChanceClient,
  { joint, insert, torque, torques, seed }: Question,
  { onProgress, signal }: Required<RunOptions>,
): Promise<Outcome<Sampled>> {
  const single = await client.runChance(
    { joint, insert, torque, samples: SAMPLES, seed },
    { signal, onProgress: (share) => onProgress((share * SAMPLES) / ALL) },
  );
  if (single.kind !== 'done') return single;
  const over = await client.runChanceOverTorque(
    { joint, insert, torques, samples: SAMPLES_OF_CURVE, seed },
    { signal, onProgress: (share) => onProgress((SAMPLES + share * SAMPLES_OF_CURVE) / ALL) },
  );
  if (over.kind !== 'done') return over;
  // The page asks nothing of a joint that is stopped; should the two ever disagree, it is told.
  if (single.output.kind === 'stopped' || over.output.kind === 'stopped') {
    return { kind: 'failed', code: 'calculation-failed', message: 'the joint is stopped' };
  }
  return { kind: 'done', output: { result: single.output.answer, curve: over.output.answer } };
}
