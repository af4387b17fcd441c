import { useMemo } from 'react';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import type { PrinterRecord } from '../../../storage/document.ts';
import { chanceText, decimalText, derivedText, NO_BREAK_SPACE } from '../../../wording/amount.ts';
import { NEXT_HOLE_GAINS_LITTLE } from '../../../wording/my-printer.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { useSheetValue } from '../../state/sheet-context.ts';
import styles from './my-printer.module.css';
import { nextHoleOf } from './printer-findings.ts';

const SLOT = 'next-hole';
/** A gain of less than this is not worth a print, [-]. */
const LITTLE = 0.01;

interface NextHoleProps {
  readonly joint: Joint;
  readonly assessment: JointAssessment;
  readonly printer: PrinterRecord | undefined;
}

/** What one more coupon hole would gain for this joint, and at which diameter to print it. */
export function NextHole({ joint, assessment, printer }: NextHoleProps) {
  const permissibleError = useSheetValue(({ journal }) => journal.present.caliper.permissibleError_mm);
  const next = useMemo(
    () => nextHoleOf(permissibleError, printer, { joint, assessment }),
    [permissibleError, printer, joint, assessment],
  );
  const { drawn, chance, deviationBefore, deviationAfter } = next;
  const isLittle = chance !== undefined && chance.gain.value < LITTLE;
  const now = <Scatter derived={deviationBefore} name="Scatter of the bore now" />;
  const chanceNow = chance ? <Chance derived={chance.before} name="Chance that the bore fits now" /> : null;
  return (
    <section className={styles['part']} aria-label="The next coupon hole">
      <h3>The next coupon hole</h3>
      <DerivationRow slot={SLOT}>
        <p className={styles['words']}>
          {isLittle ? (
            <>
              One more would gain this joint next to nothing: its bore scatters by {now} and {chanceNow} fit.{' '}
              {NEXT_HOLE_GAINS_LITTLE}
            </>
          ) : (
            <>
              Print it at{' '}
              <b>
                <ComputedValue
                  derived={drawn}
                  text={`⌀ ${derivedText(drawn)}`}
                  label={`Diameter of the next coupon hole, ${derivedText(drawn)}`}
                />
              </b>
              . Once it is read, the scatter of this joint’s bore falls from {now} to{' '}
              <Scatter derived={deviationAfter} name="Scatter of the bore after it" />
              {chance ? (
                <>
                  , and the chance that it fits rises from {chanceNow} to{' '}
                  <Chance derived={chance.after} name="Chance that the bore fits after it" />
                </>
              ) : null}
              .
            </>
          )}
        </p>
        <DerivationSlot name={SLOT} />
      </DerivationRow>
    </section>
  );
}

interface NamedProps {
  readonly derived: Derived;
  readonly name: string;
}

function Chance({ derived, name }: NamedProps) {
  const text = chanceText(derived.value);
  return <ComputedValue derived={derived} text={text} label={`${name}, ${text}`} />;
}

function Scatter({ derived, name }: NamedProps) {
  const text = `${decimalText(derived.value, 3)}${NO_BREAK_SPACE}mm`;
  return <ComputedValue derived={derived} text={text} label={`${name}, ${text}`} />;
}
