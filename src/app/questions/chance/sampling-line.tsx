import { percentText } from '../../../wording/amount.ts';
import { SAMPLING_FAULTS } from '../../../wording/chance.ts';
import styles from './chance.module.css';
import type { SamplingState } from './sampling-state.ts';
import type { Sampling } from './use-sampling.ts';

/** Where the sampling stands, and what can be done about it. */
export function SamplingLine({ sampling: { state, cancel, again } }: { readonly sampling: Sampling }) {
  const { phase } = state;
  const isUnderWay = phase === 'waiting' || phase === 'running';
  return (
    <div className={styles['state']}>
      {/* Heard once a phase; the share, which changes all the time, is only seen. */}
      <output>{wordsOf(state)}</output>
      {phase === 'running' && <p className="line">{percentText(state.share)} done</p>}
      {isUnderWay && (
        <button type="button" className="go" onClick={cancel}>
          Cancel
        </button>
      )}
      {(phase === 'cancelled' || phase === 'failed') && (
        <button type="button" className="go" onClick={again}>
          {phase === 'failed' ? 'Try again' : 'Sample after all'}
        </button>
      )}
    </div>
  );
}

function wordsOf({ phase, failure, found }: SamplingState): string {
  switch (phase) {
    case 'waiting':
      return 'Sampling begins as soon as nothing else is worked out.';
    case 'running':
      return 'Sampling.';
    case 'done':
      return 'Sampled.';
    case 'cancelled':
      return found
        ? 'Cancelled: what stands here is older than the joint.'
        : 'Cancelled: nothing was sampled.';
    case 'failed': {
      const detail = failure?.message ? ` It says: ${failure.message}.` : '';
      return `${SAMPLING_FAULTS[failure?.code ?? 'worker-died']}${detail}`;
    }
  }
}
