import { forceText } from '../../../wording/amount.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { hasSharesOfLoad } from '../../pattern/plan-input.ts';
import { useFindings } from '../../state/sheet-context.ts';
import styles from './given.module.css';

const SLOT = 'worst screw';

/** What the joint is asked with where the loads of the part are not those of the screw. */
export function WorstScrew() {
  const { joint } = useFindings();
  if (!hasSharesOfLoad(joint)) return null;
  const { pull, shear } = joint.group.loads;
  const screw = joint.group.pattern.kind === 'single' ? 'the screw' : 'the worst screw';
  return (
    <>
      {(
        [
          [`Pull on ${screw}`, pull],
          [`Load across ${screw}`, shear],
        ] as const
      ).map(([label, derived]) => (
        <p key={label} className={styles.found}>
          <span>{label}</span>
          <ComputedValue
            derived={derived}
            text={forceText(derived.value)}
            label={`${label}, ${forceText(derived.value)}`}
            slot={SLOT}
          />
        </p>
      ))}
      <DerivationSlot name={SLOT} />
    </>
  );
}
