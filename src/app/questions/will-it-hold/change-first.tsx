import { useCallback } from 'react';
import type { Insert } from '../../../core/inserts/insert.ts';
import type { AnswerableJoint } from '../../../core/joint/stop.ts';
import type { Hold } from '../../../core/service/hold.ts';
import { smallestMargin } from '../../../core/service/margins.ts';
import { remediesFor } from '../../../core/service/remedies.ts';
import { type Sensitivity, sensitivities } from '../../../core/service/sensitivity.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { sentenceOfRemedy, sentenceOfSensitivity } from '../../../wording/levers.ts';
import type { Sentence } from '../../../wording/sentence.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { useNear } from '../use-near.ts';
import { changesOf } from './changes.ts';
import { useWhenIdle } from './use-when-idle.ts';
import styles from './will-it-hold.module.css';

interface ChangeFirstProps {
  readonly joint: AnswerableJoint;
  readonly insert: Insert;
  readonly hold: Hold;
  readonly isHeld: boolean;
}

/** Which input moves the smallest margin most; and for a joint that fails, what alone lets it hold. */
export function ChangeFirst({ joint, insert, hold, isHeld }: ChangeFirstProps) {
  const [element, isNear] = useNear<HTMLDivElement>();
  const { result, isStale } = useWhenIdle(
    useCallback(
      () => ({
        given: smallestMargin(hold.worst, joint.factors),
        moves: sensitivities(joint, insert, hold.torque),
        remedies: isHeld ? undefined : remediesFor(joint, insert),
      }),
      [joint, insert, hold, isHeld],
    ),
    isNear,
  );
  return (
    <div
      ref={element}
      className={styles['changes']}
      aria-busy={isStale || undefined}
      data-stale={(isStale && result !== undefined) || undefined}
    >
      {result === undefined ? (
        <p className={styles['unloaded']}>What to change first is being worked out.</p>
      ) : (
        <>
          {result.remedies && (
            <div>
              <h3>The smallest change that lets it hold</h3>
              {result.remedies.length === 0 ? (
                <p>No single change is enough: it takes several, such as less load and another insert.</p>
              ) : (
                <ul className={styles['list']}>
                  {result.remedies.map((remedy) => (
                    <Change
                      key={remedy.lever}
                      slot={`remedy ${remedy.lever}`}
                      sentence={sentenceOfRemedy(remedy)}
                    />
                  ))}
                </ul>
              )}
            </div>
          )}
          <Changes given={result.given} moves={result.moves} />
        </>
      )}
    </div>
  );
}

interface ChangesProps {
  /** Smallest margin before any step. */
  readonly given: Derived;
  readonly moves: readonly Sensitivity[];
}

function Changes({ given, moves }: ChangesProps) {
  const { better, worse } = changesOf(given.value, moves);
  return (
    <>
      <div>
        <h3>What to change first</h3>
        {better.length === 0 ? (
          <p>No single step makes the smallest margin larger.</p>
        ) : (
          <ol className={styles['list']}>
            {better.map((move) => (
              <Change
                key={move.lever}
                slot={`change ${move.lever}`}
                sentence={sentenceOfSensitivity(given, move)}
              />
            ))}
          </ol>
        )}
      </div>
      {worse.length > 0 && (
        <div>
          <h3>What makes it worse</h3>
          <ul className={styles['list']}>
            {worse.map((move) => (
              <Change
                key={move.lever}
                slot={`change ${move.lever}`}
                sentence={sentenceOfSensitivity(given, move)}
              />
            ))}
          </ul>
        </div>
      )}
    </>
  );
}

interface ChangeProps {
  readonly slot: string;
  readonly sentence: Sentence;
}

/** One change in a sentence; its numbers open below it. */
const Change = ({ slot, sentence }: ChangeProps) => (
  <DerivationRow slot={slot}>
    <li>
      <Told sentence={sentence} />
      <DerivationSlot name={slot} />
    </li>
  </DerivationRow>
);
