import type { Chance, ChanceResult } from '../../../core/chance/chance-result.ts';
import { type Draw, endsInThousand, oneAmong } from '../../../core/chance/counted.ts';
import { HARM_OF, OUTCOMES, type Outcome } from '../../../core/chance/sample-chance.ts';
import { OUTCOME_WORDS, oneIn, spreadInThousand } from '../../../wording/chance.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import styles from './chance.module.css';
import { Count } from './count.tsx';

const COLUMNS = 4;

interface OutcomeTableProps {
  readonly result: ChanceResult;
  readonly draw: Draw;
}

/** How often each thing happens, with how far the sampling may be off. */
export function OutcomeTable({ result, draw }: OutcomeTableProps) {
  const { outcomes, harm, anything, byMode } = result;
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
            <Row key={outcome} words={OUTCOME_WORDS[outcome]} chance={outcomes[outcome]} draw={draw} />
          ) : (
            <tr key={outcome} className={styles['row']}>
              <th scope="row">{OUTCOME_WORDS[outcome]}</th>
              <td colSpan={3} className={styles['not']}>
                tightening loads nothing of that here
              </td>
            </tr>
          ),
        )}
        <Row words="Harm of any kind" chance={harm} draw={draw} isSum />
        <Row words="Harmed, loose or both" chance={anything} draw={draw} isSum />
      </tbody>
    </table>
  );
}

interface RowProps {
  readonly words: string;
  readonly chance: Chance;
  readonly draw: Draw;
  readonly isSum?: boolean;
}

function Row({ words, chance, draw, isSum }: RowProps) {
  const slot = `chance ${words}`;
  return (
    <DerivationRow slot={slot}>
      <tr className={[styles['row'], isSum ? styles['sum'] : ''].join(' ').trim()}>
        <th scope="row">{words}</th>
        <td>
          <Count chance={chance} draw={draw} what={words} />
        </td>
        <td data-name="95 of 100 samplings say">
          <Told sentence={spreadInThousand(endsInThousand(chance, draw))} of={words} />
        </td>
        <td data-name="in words">
          <Told sentence={oneIn(chance, (counts) => oneAmong(chance, draw, counts))} of={words} />
        </td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}
