import type { ProofRow } from '../../../core/bench/proof-rows.ts';
import { type LastingLoad, PROOF_HOLD } from '../../../core/evidence/proof-plan.ts';
import type { WithinScatter } from '../../../core/evidence/within-scatter.ts';
import { decimalText, durationText, forceText, temperatureText } from '../../../wording/amount.ts';
import { STANDINGS } from '../../../wording/standing.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { ProofValue } from './proof-value.tsx';
import styles from './what-tests-say.module.css';

interface ProofNotesProps {
  readonly within: WithinScatter;
  readonly row: ProofRow;
  /** Absent: a short load is meant. */
  readonly lasting?: LastingLoad;
  /** The joint in service, °C. */
  readonly warmth: number;
}

/** How long to hold, what a short pull says of a time under load, which scatter was taken. */
export function ProofNotes({ within, row, lasting, warmth }: ProofNotesProps) {
  const { sign, words } = STANDINGS['common-practice'];
  return (
    <ul className={styles['notes']}>
      <li>
        Hold each load for {PROOF_HOLD.least} to {PROOF_HOLD.greatest} s, until the reading stands still.{' '}
        <span className="line">
          {sign} {words}
        </span>
      </li>
      <DerivationRow slot="proof for a time">
        {lasting && row.heldLoad ? (
          <li>
            A short pull proves a short pull. For {durationText(lasting.hours)} the loads are{' '}
            <ProofValue
              of={lasting.creep}
              text={decimalText(lasting.creep.value, 2)}
              what="times as high as for a short pull"
            />{' '}
            times as high, as much as the plastic is taken to lose until then. Or prove it outright: hold{' '}
            <ProofValue
              of={row.heldLoad}
              text={forceText(row.heldLoad.value)}
              what="load held for the whole time"
            />{' '}
            on each for all of {durationText(lasting.hours)}.
            <DerivationSlot name="proof for a time" />
          </li>
        ) : (
          <li>A short pull proves a short pull, and nothing for months under load.</li>
        )}
      </DerivationRow>
      <li>
        Pull the coupons as warm as the joint gets, here {temperatureText(warmth)}: a pull in the cold proves
        nothing for heat.
      </li>
      <DerivationRow slot="proof scatter">
        <li>
          <Scatter within={within} />
          <DerivationSlot name="proof scatter" />
        </li>
      </DerivationRow>
      <li>Add what the scale shows with the idle lever on it.</li>
    </ul>
  );
}

function Scatter({ within: { scatter, careful, freedom } }: Pick<ProofNotesProps, 'within'>) {
  const taken = (
    <ProofValue of={scatter} text={decimalText(scatter.value, 3)} what="scatter within the set-up" />
  );
  if (freedom === 0) {
    return (
      <>
        The scatter within a set-up is taken as {taken}, an estimate; where yours is wider, the load relied on
        is too high. Two like coupons that broke begin to tell it.
      </>
    );
  }
  return (
    <>
      The scatter is taken as {taken}: that of this set-up’s like coupons, together with what is assumed
      without any.{' '}
      <ProofValue of={careful} text={decimalText(careful.value, 3)} what="scatter not ruled out" /> is not
      ruled out: with such a one the load relied on is too high.
    </>
  );
}
