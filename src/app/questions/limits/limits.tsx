import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { derivedText } from '../../../wording/amount.ts';
import { PATH_NAMES } from '../../../wording/names.ts';
import { reasonForHold } from '../../../wording/reasons.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { hasSharesOfLoad } from '../../pattern/plan-input.ts';
import { QuestionSection } from '../question-section.tsx';
import { type LimitGroup, limitGroups } from './limit-groups.ts';
import { LIMIT_COLUMNS, LimitTableRow } from './limit-row.tsx';
import styles from './limits.module.css';

export interface LimitsProps {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
}

/** Every way to fail side by side: what it bears, what loads it, how many times over. */
export function Limits({ joint, assessment }: LimitsProps) {
  const pull = hasSharesOfLoad(joint) ? 'the screw’s pull' : 'your pull';
  const groups = limitGroups(assessment.limits);
  return (
    <QuestionSection
      id="fails"
      question="What fails first?"
      aside="Each bar ends at the value that 19 of 20 joints reach; the open part is the spread about the median. The upright is the load, each group to its own scale."
    >
      <p className={styles['reason']}>{reasonForHold(assessment)}</p>
      <table className={styles['limits']}>
        <caption className="out-of-sight">
          Limits by what loads them, as characteristic and median value against the load
        </caption>
        <thead>
          <tr>
            <th scope="col">Limit</th>
            <th scope="col">Known as</th>
            <th scope="col" className={styles['scale']}>
              <span className="out-of-sight">Drawn</span>
            </th>
            <th scope="col" className={styles['number']}>
              19 of 20 hold
            </th>
            <th scope="col" className={styles['number']}>
              half hold
            </th>
            <th scope="col" className={styles['factor']}>
              times the load
            </th>
          </tr>
        </thead>
        {groups.map((group) => (
          <Group key={group.path} group={group} pull={pull} />
        ))}
      </table>
    </QuestionSection>
  );
}

/** pull: whose pull it is, of the person or of the worst screw. */
function Group({ group, pull }: { readonly group: LimitGroup; readonly pull: string }) {
  const { path, demand, rows, greatest } = group;
  return (
    <tbody>
      <DerivationRow slot={`load-${path}`}>
        <tr className={styles['heading']}>
          <th scope="rowgroup" colSpan={2}>
            {path === 'pull' ? `What ${pull} loads` : PATH_NAMES[path]}
          </th>
          <td colSpan={LIMIT_COLUMNS - 2}>
            <Load demand={demand} path={path} pull={pull} />
          </td>
        </tr>
        <DerivationSlot name={`load-${path}`} columns={LIMIT_COLUMNS} />
      </DerivationRow>
      {rows.map((row) => (
        <LimitTableRow key={row.limit.mode} row={row} greatest={greatest} />
      ))}
    </tbody>
  );
}

const LOADS = {
  clamp: 'at most',
  torque: 'reaches the insert:',
} as const;

interface LoadProps {
  readonly demand: Derived;
  readonly path: LimitGroup['path'];
  readonly pull: string;
}

function Load({ demand, path, pull }: LoadProps) {
  const text = derivedText(demand);
  return (
    <span className={styles['loadText']}>
      {path === 'pull' ? pull : LOADS[path]}{' '}
      <ComputedValue derived={demand} text={text} label={`${PATH_NAMES[path]}: ${text}`} />
    </span>
  );
}
