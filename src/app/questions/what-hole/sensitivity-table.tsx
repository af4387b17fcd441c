import type { JointAssessment } from '../../../core/joint/assessment.ts';
import { chanceText, lengthText, percentText } from '../../../wording/amount.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { sensitivityOf } from './sensitivity.ts';
import styles from './what-hole.module.css';

const nameOf = (change: number): string =>
  change === 0 ? 'as expected' : `${lengthText(Math.abs(change))} ${change < 0 ? 'tighter' : 'wider'}`;

/** What a tenth of a millimetre does. */
export function SensitivityTable({ assessment }: { readonly assessment: JointAssessment }) {
  return (
    <table className={styles['sensitivity']}>
      <caption>{assessment.hole.existing ? 'If the bore really is' : 'If the bore comes out'}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="out-of-sight">Bore</span>
          </th>
          <th scope="col">chance that it fits</th>
          <th scope="col">share of the knurl’s hold</th>
        </tr>
      </thead>
      <tbody>
        {sensitivityOf(assessment).map(({ change, chance, biteFactor }) => (
          <DerivationRow key={change} slot={`sensitivity-${change}`}>
            <tr>
              <th scope="row">{nameOf(change)}</th>
              <td>
                <ComputedValue
                  derived={chance}
                  text={chanceText(chance.value)}
                  label={`Chance of a fit, bore ${nameOf(change)}, ${chanceText(chance.value)}`}
                />
              </td>
              <td>
                <ComputedValue
                  derived={biteFactor}
                  text={percentText(biteFactor.value)}
                  label={`Share of the hold, bore ${nameOf(change)}, ${percentText(biteFactor.value)}`}
                />
              </td>
            </tr>
            <DerivationSlot name={`sensitivity-${change}`} columns={3} />
          </DerivationRow>
        ))}
      </tbody>
    </table>
  );
}
