import { type Chance, type ChanceResult, chanceInterval } from '../../../core/chance/chance-result.ts';
import { HARM_OF, OUTCOMES, type Outcome } from '../../../core/chance/sample-chance.ts';
import { inThousand, OUTCOME_WORDS, oneIn, spreadInThousand } from '../../../wording/chance.ts';
import styles from './chance.module.css';

/** How often each thing happens, with how far the sampling may be off. */
export function OutcomeTable({ result }: { readonly result: ChanceResult }) {
  const { samples, outcomes, harm, anything, byMode } = result;
  const isLoaded = (outcome: Outcome) =>
    outcome === 'loose' || byMode.some(({ mode }) => HARM_OF[mode] === outcome);
  return (
    <table className={styles['outcomes']}>
      <caption className="out-of-sight">What becomes of 1,000 joints</caption>
      <thead>
        <tr>
          <th scope="col">Of 1,000 joints</th>
          <th scope="col">count</th>
          <th scope="col">95 of 100 samplings say</th>
          <th scope="col">in words</th>
        </tr>
      </thead>
      <tbody>
        {OUTCOMES.map((outcome) =>
          isLoaded(outcome) ? (
            <Row key={outcome} words={OUTCOME_WORDS[outcome]} chance={outcomes[outcome]} samples={samples} />
          ) : (
            <tr key={outcome}>
              <th scope="row">{OUTCOME_WORDS[outcome]}</th>
              <td colSpan={3} className={styles['not']}>
                tightening loads nothing of that here
              </td>
            </tr>
          ),
        )}
        <Row words="Harm of any kind" chance={harm} samples={samples} isSum />
        <Row words="Harmed, loose or both" chance={anything} samples={samples} isSum />
      </tbody>
    </table>
  );
}

interface RowProps {
  readonly words: string;
  readonly chance: Chance;
  readonly samples: number;
  readonly isSum?: boolean;
}

function Row({ words, chance, samples, isSum }: RowProps) {
  return (
    <tr className={isSum ? styles['sum'] : undefined}>
      <th scope="row">{words}</th>
      <td>{inThousand(chance.probability)}</td>
      <td data-name="95 of 100 samplings say">{spreadInThousand(chanceInterval(chance, samples))}</td>
      <td data-name="in words">{oneIn(chance.probability)}</td>
    </tr>
  );
}
