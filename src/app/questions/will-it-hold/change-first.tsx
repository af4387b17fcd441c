import { useCallback } from 'react';
import type { Insert } from '../../../core/inserts/insert.ts';
import type { AnswerableJoint } from '../../../core/joint/stop.ts';
import type { Hold } from '../../../core/service/hold.ts';
import { remediesFor } from '../../../core/service/remedies.ts';
import { type Sensitivity, sensitivities } from '../../../core/service/sensitivity.ts';
import { sentenceOfRemedy, sentenceOfSensitivity } from '../../../wording/levers.ts';
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
        given: hold.worst.margin,
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
                    <li key={remedy.lever}>{sentenceOfRemedy(remedy)}</li>
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
  readonly given: number;
  readonly moves: readonly Sensitivity[];
}

function Changes({ given, moves }: ChangesProps) {
  const { better, worse } = changesOf(given, moves);
  return (
    <>
      <div>
        <h3>What to change first</h3>
        {better.length === 0 ? (
          <p>No single step makes the smallest margin larger.</p>
        ) : (
          <ol className={styles['list']}>
            {better.map((move) => (
              <li key={move.lever}>{sentenceOfSensitivity(given, move)}</li>
            ))}
          </ol>
        )}
      </div>
      {worse.length > 0 && (
        <div>
          <h3>What makes it worse</h3>
          <ul className={styles['list']}>
            {worse.map((move) => (
              <li key={move.lever}>{sentenceOfSensitivity(given, move)}</li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
