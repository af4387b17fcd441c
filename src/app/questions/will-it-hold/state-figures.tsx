import type { ServiceState } from '../../../core/service/service-state.ts';
import { whenOf } from '../../../wording/hold.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { FIGURES, type Figure } from './figures.ts';
import styles from './will-it-hold.module.css';

/** What the margins rest on, in each state. */
export function StateFigures({ states }: { readonly states: readonly ServiceState[] }) {
  return (
    <tbody className={styles['figures']}>
      {FIGURES.map((figure) => (
        <DerivationRow key={figure.name} slot={`hold-${figure.name}`}>
          <tr>
            <th scope="row">{figure.name}</th>
            {states.map((state) => (
              <td key={state.id}>
                <StateFigure figure={figure} state={state} />
              </td>
            ))}
          </tr>
          <DerivationSlot name={`hold-${figure.name}`} columns={states.length + 1} />
        </DerivationRow>
      ))}
    </tbody>
  );
}

interface StateFigureProps {
  readonly figure: Figure;
  readonly state: ServiceState;
}

export function StateFigure({ figure, state }: StateFigureProps) {
  const derived = figure.derivedIn(state);
  if (derived === undefined) return <span className={styles['unloaded']}>no pull</span>;
  const text = figure.textOf(derived);
  return <ComputedValue derived={derived} text={text} label={`${figure.name}, ${whenOf(state)}, ${text}`} />;
}
