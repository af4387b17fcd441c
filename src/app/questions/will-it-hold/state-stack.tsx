import type { Joint } from '../../../core/joint/joint.ts';
import type { Hold } from '../../../core/service/hold.ts';
import { type Margin, marginsOf } from '../../../core/service/margins.ts';
import type { ServiceState } from '../../../core/service/service-state.ts';
import { conditionOfState, nameOfEnd, titleOfState } from '../../../wording/hold.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { FIGURES } from './figures.ts';
import { MarginCell } from './margin-cell.tsx';
import { StateFigure } from './state-figures.tsx';
import { Standing } from './state-table.tsx';
import styles from './will-it-hold.module.css';

interface StateStackProps {
  readonly hold: Hold;
  readonly factors: Joint['factors'];
}

/** The states one below the other, for narrow screens; each with the most endangered first. */
export function StateStack({ hold, factors }: StateStackProps) {
  return hold.states.map((state) => (
    <OneState key={state.id} state={state} margins={marginsOf(state, factors)} />
  ));
}

interface OneStateProps {
  readonly state: ServiceState;
  readonly margins: readonly Margin[];
}

function OneState({ state, margins }: OneStateProps) {
  const loaded = margins.filter(({ margin }) => margin !== undefined);
  const unloaded = margins.filter(({ margin }) => margin === undefined).map(({ by }) => nameOfEnd(by));
  return (
    <section className={styles['state']} aria-labelledby={`hold-state-${state.id}`}>
      <h3 id={`hold-state-${state.id}`} className={styles['title']}>
        {titleOfState(state)}
      </h3>
      <p className={styles['condition']}>{conditionOfState(state)}</p>
      <ul>
        {loaded.map((margin) => {
          const cell = { state, margin };
          const slot = `hold-${state.id}-${margin.by}`;
          return (
            <DerivationRow key={margin.by} slot={slot}>
              <li className={styles['end']}>
                <p className={styles['endName']}>
                  {nameOfEnd(margin.by)} <Standing cells={[cell]} />
                </p>
                <MarginCell cell={cell} />
                <DerivationSlot name={slot} />
              </li>
            </DerivationRow>
          );
        })}
      </ul>
      {unloaded.length > 0 && <p className={styles['unloaded']}>Not loaded then: {unloaded.join('; ')}.</p>}
      <dl className={styles['stateFigures']}>
        {FIGURES.map((figure) => {
          const slot = `hold-${state.id}-${figure.name}`;
          return (
            <DerivationRow key={figure.name} slot={slot}>
              <div>
                <dt>{figure.name}</dt>
                <dd>
                  <StateFigure figure={figure} state={state} />
                </dd>
              </div>
              <DerivationSlot name={slot} />
            </DerivationRow>
          );
        })}
      </dl>
    </section>
  );
}
